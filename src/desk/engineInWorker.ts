import type { Engine, EngineAnswer, EngineRequest } from "../host/embedded/recalculation/engine";

/** What passes between the page and the worker. */
export type WorkerQuestion = { readonly id: number; readonly request: EngineRequest };
export type WorkerAnswer = { readonly id: number; readonly answer: EngineAnswer | null; readonly fault: string | null };

/**
 * The calculation engine in a worker that is started with the first question. Where it cannot run (a browser or a farm's
 * firewall may refuse it) that is told once, and from then on no formula has an answer, so that old values are marked as old.
 */
export function engineInWorker(tell: (fault: string) => void): Engine {
  let worker: Worker | null = null;
  let isBroken = false;
  let count = 0;
  const waiting = new Map<number, { readonly request: EngineRequest; readonly resolve: (answer: EngineAnswer) => void }>();

  const giveUp = (fault: string) => {
    if (!isBroken) tell(fault);
    isBroken = true;
    worker?.terminate();
    for (const { request, resolve } of waiting.values()) resolve(withoutAnswer(request));
    waiting.clear();
  };
  const started = (): Worker => {
    const made = new Worker(new URL("./engineWorker.ts", import.meta.url));
    made.addEventListener("message", ({ data: { id, answer, fault } }: MessageEvent<WorkerAnswer>) => {
      if (answer === null) return giveUp(fault ?? "no answer");
      waiting.get(id)?.resolve(answer);
      waiting.delete(id);
    });
    made.addEventListener("error", (event) => giveUp(event.message || "its program did not arrive"));
    return made;
  };

  return (request) => {
    if (isBroken) return Promise.resolve(withoutAnswer(request));
    worker ??= started();
    const id = count;
    count += 1;
    const asked = worker;
    return new Promise((resolve) => {
      waiting.set(id, { request, resolve });
      asked.postMessage({ id, request } satisfies WorkerQuestion);
    });
  };
}

const withoutAnswer = ({ formulas }: EngineRequest): EngineAnswer => formulas.map(() => null);
