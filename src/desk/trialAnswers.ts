/** What the worker does that tries a file: it opens and reads it as the page would, so that what hangs or fills the memory does so here. */
import { openWorkbook } from "../host/embedded";
import { seasonReport } from "../workbook/report";
import type { TrialAnswer } from "./trial";

/** Says that it is there, and then what came of the file that it is handed. */
export function answerTrial(): void {
  addEventListener("message", ({ data }: MessageEvent<Uint8Array>) => {
    void tried(data).then((answer) => postMessage(answer));
  });
  postMessage({ is: "started" } satisfies TrialAnswer);
}

/** A fault goes back as words: an exception does not cross to the page. */
async function tried(bytes: Uint8Array): Promise<TrialAnswer> {
  const began = performance.now();
  try {
    const opened = openWorkbook(bytes);
    if (!opened.ok) return { is: "refused", words: opened.problems.map(({ message }) => message).join(" ") };
    seasonReport(await opened.value.read());
    return { is: "opens", milliseconds: performance.now() - began };
  } catch (fault) {
    return { is: "refused", words: `Reading it broke down: ${fault instanceof Error ? fault.message : String(fault)}.` };
  }
}
