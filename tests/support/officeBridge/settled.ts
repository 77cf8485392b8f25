import { vi } from "vitest";

/** Lets everything come to pass that waits for no clock, before the clock is moved on. */
const { setImmediate: nextTurn } = globalThis;
const quiet = async () => {
  for (let turn = 0; turn < 5; turn += 1) await new Promise((resolve) => nextTurn(resolve));
};

export type Settled<Value> = { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly error: unknown };

/** Lets imitated time go by until a promise is settled, or for so many seconds; `null` where it is not settled then. */
export async function settled<Value>(promise: Promise<Value>, seconds = 3600): Promise<Settled<Value> | null> {
  let result: Settled<Value> | null = null;
  promise.then(
    (value) => {
      result = { ok: true, value };
    },
    (error: unknown) => {
      result = { ok: false, error };
    },
  );
  const end = Date.now() + seconds * 1000;
  while (result === null && Date.now() < end) {
    if (vi.getTimerCount() === 0) await vi.advanceTimersByTimeAsync(1000);
    else await vi.advanceTimersToNextTimerAsync();
    await quiet();
  }
  return result;
}
