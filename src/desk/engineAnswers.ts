/** What the calculation engine's worker does, wherever its program comes from. */
import type { EngineRequest } from "../host/embedded";
import { ironCalcAnswer } from "../host/embedded/recalculation/ironCalc";
import type { WorkerAnswer, WorkerQuestion } from "./engineInWorker";

/** While the program is on its way the page hears each second that the worker lives, at most so often. */
const mostSignsOfLife = 30;

/** Answers the page's questions from when the program has been loaded. */
export function answerQuestions(loaded: Promise<unknown>): void {
  let signs = 0;
  const living = setInterval(() => {
    signs += 1;
    if (signs >= mostSignsOfLife) clearInterval(living);
    postMessage({ loading: true } satisfies WorkerAnswer);
  }, 1000);
  void loaded.catch(() => undefined).then(() => clearInterval(living));

  addEventListener("message", ({ data: { id, request } }: MessageEvent<WorkerQuestion>) => {
    void answer(loaded, request).then((result) => postMessage({ id, ...result } satisfies WorkerAnswer));
  });
}

/** A fault goes back as words: an exception does not cross to the page. */
async function answer(
  loaded: Promise<unknown>,
  request: EngineRequest,
): Promise<{ readonly answer: ReturnType<typeof ironCalcAnswer> | null; readonly fault: string | null }> {
  try {
    await loaded;
    return { answer: ironCalcAnswer(request), fault: null };
  } catch (fault) {
    return { answer: null, fault: fault instanceof Error ? fault.message : String(fault) };
  }
}
