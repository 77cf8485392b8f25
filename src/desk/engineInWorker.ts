import type { Engine, EngineAnswer, EngineRequest } from "../host/embedded";
import { carriedFile } from "./carried";
import { laterInPage, type Later } from "./later";

/** What passes between the page and the worker. */
export type WorkerQuestion = { readonly id: number; readonly request: EngineRequest };
/** `loading`: the engine's program is still on its way, and the worker lives. */
export type WorkerAnswer =
  { readonly loading: true } | { readonly id: number; readonly answer: EngineAnswer | null; readonly fault: string | null };

/** As much of a worker as is used here, so that a test can stand in for one. */
export type EngineWorker = {
  readonly postMessage: (question: WorkerQuestion) => void;
  readonly terminate: () => void;
  onmessage: ((event: { readonly data: WorkerAnswer }) => void) | null;
  onerror: ((event: { readonly message: string }) => void) | null;
};

/** Milliseconds without a sign of life after which a worker counts as dead. */
export const longestSilence = 5_000;

function startWorker(): EngineWorker {
  const carried = carriedFile("engine.js");
  if (carried === null) return new Worker(new URL("./engineWorker.ts", import.meta.url)) as EngineWorker;
  return new Worker(URL.createObjectURL(new Blob([carried], { type: "text/javascript" }))) as EngineWorker;
}

/**
 * The calculation engine in a worker, which is started with the first question: a workbook without formulas never loads it.
 * Rejects where it cannot run, because a browser or a firewall refuses its program, where it breaks down, and where nothing is
 * heard of it for five seconds. Such a worker is ended, and the next question starts another.
 */
export function engineInWorker(start: () => EngineWorker = startWorker, later: Later = laterInPage): Engine {
  let worker: EngineWorker | null = null;
  let count = 0;
  let stopWatching = () => {};
  const waiting = new Map<number, { readonly resolve: (answer: EngineAnswer) => void; readonly reject: (fault: Error) => void }>();

  const giveUp = (why: string) => {
    stopWatching();
    worker?.terminate();
    worker = null;
    const asked = [...waiting.values()];
    waiting.clear();
    for (const { reject } of asked) reject(new Error(why));
  };
  const watch = () => {
    stopWatching();
    stopWatching =
      waiting.size === 0 ? () => {} : later(longestSilence, () => giveUp("the calculation engine gave no answer for five seconds"));
  };
  const started = (): EngineWorker => {
    const made = start();
    made.onmessage = ({ data }) => {
      if (made !== worker) return;
      if (!("loading" in data)) {
        const asked = waiting.get(data.id);
        waiting.delete(data.id);
        if (data.answer === null) {
          const fault = data.fault ?? "no answer";
          asked?.reject(new Error(fault));
          // A program that broke down once has a memory that nobody can trust, and might never answer again.
          giveUp(fault);
          return;
        }
        asked?.resolve(data.answer);
      }
      watch();
    };
    made.onerror = ({ message }) => {
      if (made === worker) giveUp(message || "the program of the calculation engine did not arrive");
    };
    return made;
  };

  return (request) =>
    new Promise((resolve, reject) => {
      worker ??= started();
      count += 1;
      waiting.set(count, { resolve, reject });
      worker.postMessage({ id: count, request });
      watch();
    });
}
