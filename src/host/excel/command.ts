/** How commands that write are carried out: they read, write in one round trip, and where that goes wrong look what became of it. */
import { HostError, type Written } from "../workbookHost";
import { attempt } from "./attempt";

/** What a look at the workbook finds of what a command wrote; `unclear` where others have changed the same place meanwhile. */
export type Found = "there" | "not there" | "partly" | "unclear";

/** A command that has read what it needs and knows what it will write. */
export type Ready<Value> = {
  /** Asks Excel for all changes, in the batch that goes out next. */
  readonly write: () => void;
  /** What the command answers once that is done. */
  readonly value: Value;
  /** Reads whether it is done, in a context of its own. */
  readonly look: (context: Excel.RequestContext) => Promise<Found>;
};

/** Whether a command has something to write. */
export const isReady = (part: Ready<unknown> | { readonly done: unknown }): part is Ready<unknown> => !("done" in part);

/** Reads and gets ready; or is done already, because there is nothing to write. */
export type Command<Value> = (context: Excel.RequestContext) => Promise<Ready<Value> | { readonly done: Value }>;

export type CommandOptions = {
  /** How long to wait for each answer of Excel, in seconds. */
  readonly seconds: number;
  /** Hears words while it is not known what became of the command, and `null` once it is. */
  readonly waiting: (words: string | null) => void;
  /** Hears that Excel has done after all what the user was told is not there. */
  readonly doneLate: () => void;
};

/**
 * Carries out a command. When the request that writes has gone out and fails or is not answered, the workbook is read again until
 * Excel answers: the command then ends as if nothing had happened where everything is there, and else says what is there.
 *
 * @throws HostError, whose `written` says what is in the workbook
 */
export async function carryOut<Value>(command: Command<Value>, { seconds, waiting, doneLate }: CommandOptions): Promise<Value> {
  const sent: { ready?: Ready<Value>; isAnswered?: boolean; isTold?: boolean } = {};
  let cameLate: (found: Found) => void = () => undefined;
  const late = new Promise<Found>((resolve) => {
    cameLate = resolve;
  });
  const onLate = () => (sent.isTold ? doneLate() : cameLate("there"));
  try {
    return await attempt({ seconds, doneLate: onLate }, async (context, goOn) => {
      const ready = await command(context);
      if ("done" in ready) return ready.done;
      goOn();
      ready.write();
      sent.ready = ready;
      // Asked for last, so that it comes back only where everything before it was carried out.
      const receipt = context.workbook.protection.load("protected");
      await context.sync().finally(() => {
        sent.isAnswered = true;
      });
      void receipt.protected;
      return ready.value;
    });
  } catch (error) {
    if (sent.ready === undefined || !(error instanceof HostError)) throw error;
    const found = await Promise.race([lookUntilAnswered(sent.ready.look, { seconds, waiting }), late]);
    waiting(null);
    if (found === "there") return sent.ready.value;
    sent.isTold = true;
    const [written, words] = foundWords[found];
    const later = sent.isAnswered ? "" : " Should Excel still do it, you are told here.";
    throw new HostError(error.reason, `${error.message} ${words}${later}`, { cause: error.cause, written });
  }
}

const foundWords: Readonly<Record<Exclude<Found, "there">, readonly [Written, string]>> = {
  "not there": ["no", "The workbook was read again: nothing of it is there."],
  partly: ["partly", "The workbook was read again: only a part of it is there. Trying again finishes it."],
  unclear: ["unknown", "The workbook was read again, but others have changed the same place: look there before you try again."],
};

/** Asks until Excel answers, less and less often. */
async function lookUntilAnswered(
  look: Ready<unknown>["look"],
  { seconds, waiting }: Pick<CommandOptions, "seconds" | "waiting">,
): Promise<Found> {
  for (let pause = seconds / 10; ; pause = Math.min(2 * pause, seconds)) {
    try {
      return await attempt({ seconds }, look);
    } catch (error) {
      if (!(error instanceof HostError)) throw error;
      waiting(`${error.message} Whether it was written is known once Excel answers; do not enter it again before.`);
    }
    await new Promise((resolve) => setTimeout(resolve, pause * 1000));
  }
}
