import type { Engine, EngineAnswer, EngineRequest } from "../host/embedded";

/** What passes between the page and the worker. */
export type WorkerQuestion = { readonly id: number; readonly request: EngineRequest };
export type WorkerAnswer = { readonly id: number; readonly answer: EngineAnswer | null; readonly fault: string | null };

/**
 * The calculation engine in a worker, which is started with the first question: a workbook without formulas never loads it.
 * Rejects where it cannot run, because a browser or a firewall refuses its program, or where it breaks down.
 */
export function engineInWorker(): Engine {
  let worker: Worker | null = null;
  let count = 0;
  const waiting = new Map<number, { readonly resolve: (answer: EngineAnswer) => void; readonly reject: (fault: Error) => void }>();

  const started = (): Worker => {
    const made = new Worker(new URL("./engineWorker.ts", import.meta.url));
    made.addEventListener("message", ({ data: { id, answer, fault } }: MessageEvent<WorkerAnswer>) => {
      const asked = waiting.get(id);
      waiting.delete(id);
      if (answer === null) asked?.reject(new Error(fault ?? "no answer"));
      else asked?.resolve(answer);
    });
    made.addEventListener("error", (event) => {
      for (const { reject } of waiting.values()) reject(new Error(event.message || "the program of the calculation engine did not arrive"));
      waiting.clear();
    });
    return made;
  };

  return (request) => new Promise((resolve, reject) => {
    worker ??= started();
    count += 1;
    waiting.set(count, { resolve, reject });
    worker.postMessage({ id: count, request } satisfies WorkerQuestion);
  });
}
