/** Keeps one reading of the workbook up to date: reads at once, again after each hint of a change, never twice at a time. */
import type { WorkbookHost } from "../host/workbookHost";
import type { WorkbookContent } from "../workbook/cell";
import type { SeasonReport } from "../workbook/seasonReport";
import { outcome, type Failure, type Outcome } from "./failure";

export type Reading = { readonly content: WorkbookContent; readonly report: SeasonReport };

export type WatchState = {
  /** The last reading that came through; `null` before the first. It stays while a newer one fails. */
  readonly reading: Reading | null;
  readonly isReading: boolean;
  /** Why the newest attempt failed; `null` where it did not. */
  readonly failure: Failure | null;
  /** Why changes are not noticed by themselves; `null` where they are. */
  readonly deaf: Failure | null;
  /** A fault of ours, for the error boundary; `undefined` where there is none. */
  readonly fault: unknown;
};

export type SeasonWatch = {
  readonly state: () => WatchState;
  readonly subscribe: (changed: () => void) => () => void;
  /** A hint that something may have changed: reads when no other hint has come for `hintDelay` milliseconds. */
  readonly hint: () => void;
  /** Reads now; resolves to a reading that began after the call, or to why there is none. */
  readonly refresh: () => Promise<Outcome<Reading>>;
  /** Begins to read and to listen; call the result to stop. */
  readonly start: () => () => void;
};

export const hintDelay = 300;

export function watchSeason(host: WorkbookHost, understand: (content: WorkbookContent) => SeasonReport): SeasonWatch {
  let state: WatchState = { reading: null, isReading: false, failure: null, deaf: null, fault: undefined };
  const listeners = new Set<() => void>();
  const set = (changes: Partial<WatchState>) => {
    state = { ...state, ...changes };
    for (const listener of listeners) listener();
  };
  let timer: ReturnType<typeof setTimeout> | undefined;
  let running: Promise<Outcome<Reading>> | null = null;
  let next: Promise<Outcome<Reading>> | null = null;

  const readOnce = async (): Promise<Outcome<Reading>> => {
    set({ isReading: true });
    try {
      const read = await outcome(async (): Promise<Reading> => {
        const content = await host.read();
        return { content, report: understand(content) };
      });
      set(read.ok ? { reading: read.value, failure: null } : { failure: read.failure });
      return read;
    } catch (fault) {
      set({ fault });
      throw fault;
    } finally {
      running = null;
      set({ isReading: next !== null });
    }
  };

  const refresh = (): Promise<Outcome<Reading>> => {
    clearTimeout(timer);
    if (running === null) return (running = readOnce());
    // Whatever asks during a reading shares the one that follows it: that one sees every change so far.
    next ??= running.then(startNext, startNext);
    return next;
  };
  const startNext = () => {
    next = null;
    return (running = readOnce());
  };

  const hint = () => {
    clearTimeout(timer);
    timer = setTimeout(inBackground, hintDelay);
  };
  // Its fault is in the state already, where the error boundary finds it.
  const inBackground = () => void refresh().catch(() => undefined);

  const start = () => {
    inBackground();
    const listening = outcome(() => host.onChanged(hint));
    listening.then((heard) => { if (!heard.ok) set({ deaf: heard.failure }); }, (fault: unknown) => set({ fault }));
    return () => {
      clearTimeout(timer);
      listening.then((heard) => (heard.ok ? outcome(heard.value) : undefined)).catch((fault: unknown) => set({ fault }));
    };
  };

  return {
    state: () => state,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    hint, refresh, start,
  };
}
