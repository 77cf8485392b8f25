/** Keeps one reading of the workbook up to date: reads at once, again after each hint of a change, never twice at a time. */
import type { WorkbookHost } from "../host/workbookHost";
import type { WorkbookContent } from "../workbook/cell";
import type { SeasonReport } from "../workbook/seasonReport";
import { outcome, type Failure, type Outcome } from "./failure";

type Reading = { readonly content: WorkbookContent; readonly report: SeasonReport };

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
  /** The user has come back to the pane: reads where it cannot be sure of its figures, or they are older than `longestTrust`. */
  readonly returned: () => void;
  /** Reads now; resolves to a reading that began after the call, or to why there is none. */
  readonly refresh: () => Promise<Outcome<Reading>>;
  /** Begins to read and to listen; call the result to stop. */
  readonly start: () => () => void;
};

/** Milliseconds, a frame: hosts call back once a burst of changes has ceased, so what is left to gather is what one entry sets off. */
export const hintDelay = 16;
/** Milliseconds after which figures are read again when the user comes back, because Excel misses a change now and then. */
export const longestTrust = 300_000;
/** Milliseconds after which a reading that found the workbook busy is tried again, the first time and at most. */
export const firstPause = 2_000;
const longestPause = 30_000;

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
  /** Whether somebody waits for the next reading, who is then told why it failed. */
  let isAsked = false;
  let isHinted = false;
  let readAt = -Infinity;
  let pause = firstPause;

  const readOnce = async (): Promise<Outcome<Reading>> => {
    const isQuiet = !isAsked && state.reading !== null;
    isAsked = false;
    isHinted = false;
    set({ isReading: true });
    try {
      const read = await outcome(async (): Promise<Reading> => {
        const content = await host.read();
        return { content, report: understand(content) };
      });
      if (read.ok) {
        readAt = Date.now();
        pause = firstPause;
        set({ reading: read.value, failure: null });
        if (state.deaf?.again === true) listen();
      } else {
        isHinted = true;
        // A cell that is being typed into is no reason for an alert: the figures stay, and are read once it is left.
        if (!isQuiet || read.failure.isBusy !== true) set({ failure: read.failure });
        if (read.failure.isBusy === true) tryLater();
      }
      return read;
    } catch (fault) {
      set({ fault });
      throw fault;
    } finally {
      running = null;
      set({ isReading: next !== null });
    }
  };

  const read = (): Promise<Outcome<Reading>> => {
    clearTimeout(timer);
    if (running === null) return (running = readOnce());
    // Whatever asks during a reading shares the one that follows it: that one sees every change so far.
    next ??= running.then(startNext, startNext);
    return next;
  };
  const refresh = () => {
    isAsked = true;
    return read();
  };
  const startNext = () => {
    next = null;
    return (running = readOnce());
  };

  const hint = () => {
    isHinted = true;
    clearTimeout(timer);
    timer = setTimeout(inBackground, hintDelay);
  };
  const returned = () => {
    if (isHinted || state.deaf !== null || Date.now() - readAt >= longestTrust) hint();
  };
  // Its fault is in the state already, where the error boundary finds it.
  const inBackground = () => void read().catch(() => undefined);
  const tryLater = () => {
    if (!isStarted) return;
    clearTimeout(timer);
    timer = setTimeout(inBackground, pause);
    pause = Math.min(2 * pause, longestPause);
  };

  let isStarted = false;
  let stopListening: (() => Promise<void>) | null = null;
  let isListening = false;
  /** Listens, once at a time; a registration that comes through after the end is given back. */
  const listen = () => {
    if (isListening || stopListening !== null) return;
    isListening = true;
    outcome(() => host.onChanged(hint)).then(
      (heard) => {
        isListening = false;
        if (heard.ok && isStarted) stopListening = heard.value;
        else if (heard.ok) giveBack(heard.value);
        set({ deaf: heard.ok ? null : heard.failure });
      },
      (fault: unknown) => set({ fault }),
    );
  };
  const giveBack = (stop: () => Promise<void>) => {
    outcome(stop).catch((fault: unknown) => set({ fault }));
  };

  const start = () => {
    isStarted = true;
    inBackground();
    listen();
    return () => {
      isStarted = false;
      clearTimeout(timer);
      if (stopListening !== null) giveBack(stopListening);
      stopListening = null;
    };
  };

  return {
    state: () => state,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    hint,
    returned,
    refresh,
    start,
  };
}
