/** A clock that a test moves by hand, in place of waiting. */
import type { Later } from "../../src/desk/later";

export function handClock(): { readonly later: Later; readonly pass: (milliseconds: number) => void } {
  let now = 0;
  let waiting: { readonly at: number; readonly then: () => void }[] = [];
  return {
    later: (milliseconds, then) => {
      const alarm = { at: now + milliseconds, then };
      waiting.push(alarm);
      return () => {
        waiting = waiting.filter((each) => each !== alarm);
      };
    },
    pass: (milliseconds) => {
      now += milliseconds;
      for (;;) {
        const due = waiting.filter(({ at }) => at <= now).sort((one, other) => one.at - other.at)[0];
        if (due === undefined) return;
        waiting = waiting.filter((each) => each !== due);
        due.then();
      }
    },
  };
}
