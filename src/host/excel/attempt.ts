import { HostError } from "../workbookHost";
import { notUnderstood, refusalOf } from "./refusal";

/** One piece of work in Excel. It asks `goOn` between reading and writing, which ends work that was given up meanwhile. */
export type Attempted<Value> = (context: Excel.RequestContext, goOn: () => void) => Promise<Value>;

export type AttemptOptions = {
  /** How long to wait for Excel, in seconds. A batch may wait for the user to leave a cell, and now and then never comes back. */
  readonly seconds: number;
  /** The context of an earlier attempt, to take back what was registered there. */
  readonly context?: Excel.RequestContext;
  /** Called when Excel has done after all what had been given up. */
  readonly doneLate?: () => void;
};

/**
 * Runs work in Excel, waiting for a cell that is being typed into instead of failing.
 *
 * @throws HostError `busy` when Excel has not answered in time, and every error of the library in words for the user.
 * Work that has not begun to write by then never will; what was already sent may still be done by Excel.
 */
export async function attempt<Value>({ seconds, context, doneLate }: AttemptOptions, work: Attempted<Value>): Promise<Value> {
  let givenUp = false;
  const goOn = () => {
    if (givenUp) throw new HostError("busy", "Given up; nothing was written.");
  };
  let timer: ReturnType<typeof setTimeout> | undefined;
  const limit = new Promise<never>((_, refuse) => {
    timer = setTimeout(() => {
      givenUp = true;
      refuse(
        new HostError("busy", `Excel has not answered for ${seconds} seconds. If you are typing in a cell, press Enter or Esc there.`),
      );
    }, seconds * 1000);
  });
  const options: Excel.RunOptions = { delayForCellEdit: true, ...(context && { previousObjects: context }) };
  const running = Excel.run(options, (granted) => work(understood(granted), goOn));
  // After the limit nobody else waits for it, and the user has been told.
  running.then(
    () => {
      if (givenUp) doneLate?.();
    },
    () => undefined,
  );
  try {
    return await Promise.race([running, limit]);
  } catch (error) {
    throw refusalOf(error);
  } finally {
    clearTimeout(timer);
  }
}

/** A context whose syncs tell an answer of Excel's that the library cannot make sense of from a fault of ours. */
function understood(context: Excel.RequestContext): Excel.RequestContext {
  const sync = context.sync.bind(context);
  context.sync = async <Passed>(passed?: Passed): Promise<Passed> => {
    try {
      return await sync(passed);
    } catch (error) {
      throw error instanceof OfficeExtension.Error ? error : notUnderstood(error);
    }
  };
  return context;
}
