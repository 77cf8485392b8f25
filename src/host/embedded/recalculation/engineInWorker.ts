import type { Engine, EngineAnswer } from "./engine";
import type { EngineReply } from "./engineWorker";

/**
 * The engine in a browser, in a worker that is started at the first question.
 *
 * @param start starts the worker; the page does it, because its bundler must see the worker's address:
 *   `() => new Worker(new URL("../host/embedded/recalculation/engineWorker.ts", import.meta.url), { type: "module" })`
 */
export function engineInWorker(start: () => Worker): Engine {
  const waiting = new Map<number, { readonly answer: (answer: EngineAnswer) => void; readonly fail: (fault: Error) => void }>();
  let worker: Worker | null = null;
  let calls = 0;

  const failAll = (fault: Error) => {
    for (const { fail } of waiting.values()) fail(fault);
    waiting.clear();
  };
  const started = (): Worker => {
    const fresh = start();
    fresh.onmessage = ({ data }: MessageEvent<EngineReply>) => {
      const call = waiting.get(data.call);
      waiting.delete(data.call);
      if ("answer" in data) call?.answer(data.answer);
      else call?.fail(new Error(data.fault));
    };
    fresh.onerror = ({ message }) => failAll(new Error(message === "" ? "The calculation engine could not be loaded." : message));
    return fresh;
  };

  return (request) => new Promise((answer, fail) => {
    worker ??= started();
    calls += 1;
    waiting.set(calls, { answer, fail });
    worker.postMessage({ call: calls, request });
  });
}
