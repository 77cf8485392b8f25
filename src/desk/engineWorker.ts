/** The calculation engine in a worker of its own, so that nobody waits for it while typing. */
import init from "@ironcalc/wasm";
import type { EngineRequest } from "../host/embedded";
import { ironCalcAnswer } from "../host/embedded/recalculation/ironCalc";
import type { WorkerAnswer, WorkerQuestion } from "./engineInWorker";

const loaded = init();

addEventListener("message", ({ data: { id, request } }: MessageEvent<WorkerQuestion>) => {
  void answer(request).then((result) => postMessage({ id, ...result } satisfies WorkerAnswer));
});

/** A fault goes back as words: an exception does not cross to the page. */
async function answer(request: EngineRequest): Promise<Pick<WorkerAnswer, "answer" | "fault">> {
  try {
    await loaded;
    return { answer: ironCalcAnswer(request), fault: null };
  } catch (fault) {
    return { answer: null, fault: fault instanceof Error ? fault.message : String(fault) };
  }
}
