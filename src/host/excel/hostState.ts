import type { HostState } from "../workbookHost";

/** Keeps what the host tells of itself, and tells it to whoever follows. */
export function hostState() {
  let state: HostState = { waiting: null, late: null, lastEntry: null };
  const followers = new Set<(state: HostState) => void>();
  return {
    tell: (changes: Partial<HostState>): void => {
      state = { ...state, ...changes };
      for (const follower of followers) follower(state);
    },
    follow: (told: (state: HostState) => void): (() => void) => {
      followers.add(told);
      told(state);
      return () => void followers.delete(told);
    },
  };
}
