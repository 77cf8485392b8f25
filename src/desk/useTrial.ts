/** Files that may take long: read apart from the page first, and opened in it only where that is wanted. */
import { useCallback, useRef, type Dispatch, type SetStateAction } from "react";
import type { NoticeText } from "./Notice";
import { needsTrial, trialOf } from "./trial";

/** What comes of a file that is read apart from the page first. */
type Worth = "open it" | "given up" | { readonly refused: string };

/** For so many milliseconds a page may stand still without a question first. */
const longestStandstill = 3_000;

export function useTrial(tell: Dispatch<SetStateAction<NoticeText | null>>) {
  const leaving = useRef(() => {});
  /** Gives up the file that is being read, if there is one: another is wanted now. */
  const giveUp = useCallback(() => leaving.current(), []);

  /**
   * Reads a file that may take long apart from the page first, where it can be given up; says whether the page is to open it. A file
   * in which the page would stand still for seconds is opened only if that is wanted.
   */
  const isWorthOpening = useCallback(
    async (name: string, bytes: Uint8Array, kept: string): Promise<Worth> => {
      if (!needsTrial(bytes)) return "open it";
      const trial = trialOf(bytes);
      leaving.current = trial.giveUp;
      const leave = { label: "Give up", choose: trial.giveUp };
      tell({ intent: "info", text: `Reading ${name} …${kept}`, answers: [leave] });
      const end = await trial.ended;
      if (end.is === "given up") {
        tell((now) => (now?.answers?.includes(leave) === true ? null : now));
        return "given up";
      }
      if (end.is === "refused") return { refused: end.words };
      if (end.milliseconds <= longestStandstill) return "open it";
      return new Promise((answer) => {
        leaving.current = () => answer("given up");
        const seconds = Math.ceil(end.milliseconds / 1000);
        tell({
          intent: "warning",
          text: `${name} takes about ${seconds} seconds to open, and nothing else on this page moves meanwhile.${kept}`,
          answers: [
            { label: "Open it", choose: () => answer("open it") },
            {
              label: "Give up",
              choose: () => {
                tell(null);
                answer("given up");
              },
            },
          ],
        });
      });
    },
    [tell],
  );

  return { isWorthOpening, giveUp };
}
