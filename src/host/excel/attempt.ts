import { HostError } from "../workbookHost";
import { refusalOf } from "./refusal";

/** One piece of work in Excel. It asks `goOn` between reading and writing, which ends work that was given up meanwhile. */
export type Work<Value> = (context: Excel.RequestContext, goOn: () => void) => Promise<Value>;

export type AttemptOptions = {
  /** How long to wait for Excel, in seconds. A batch may wait for the user to leave a cell, and now and then never comes back. */
  readonly seconds: number;
  /** The context of an earlier attempt, to take back what was registered there. */
  readonly context?: Excel.RequestContext;
};

/**
 * Runs work in Excel, waiting for a cell that is being typed into instead of failing.
 *
 * @throws HostError `busy` when Excel has not answered in time, and every error of the library in words for the user.
 * Work that has not begun to write by then never will; what was already sent may still be done by Excel, and the words say so.
 */
export async function attempt<Value>({ seconds, context }: AttemptOptions, work: Work<Value>): Promise<Value> {
  let givenUp = false;
  let writing = false;
  const goOn = () => {
    if (givenUp) throw new HostError("busy", "Given up; nothing was written.");
    writing = true;
  };
  let timer: ReturnType<typeof setTimeout> | undefined;
  const limit = new Promise<never>((_, refuse) => {
    timer = setTimeout(() => {
      givenUp = true;
      refuse(new HostError("busy", waited(seconds, writing)));
    }, seconds * 1000);
  });
  const options: Excel.RunOptions = { delayForCellEdit: true, ...(context && { previousObjects: context }) };
  const running = Excel.run(options, (granted) => work(granted, goOn));
  running.catch(() => undefined); // after the limit nobody else waits for it, and the user has been told
  try {
    return await Promise.race([running, limit]);
  } catch (error) {
    throw refusalOf(error);
  } finally {
    clearTimeout(timer);
  }
}

const waited = (seconds: number, writing: boolean) =>
  `Excel has not answered for ${seconds} seconds. If you are typing in a cell, press Enter or Esc there; then try again.` +
  (writing ? " Look at the sheet first: Excel may still finish what was asked of it." : "");
