import { useCallback, useEffect, useRef, useState, type Dispatch, type SetStateAction } from "react";
import { usePane } from "./paneContext";

/** What was typed, and the two ways to set it: by typing, and with what the form begins with once the last of it is in the workbook. */
type Kept<Value> = readonly [value: Value, set: Dispatch<SetStateAction<Value>>, beginAnew: BeginAnew<Value>];

/**
 * Begins the form anew once what was `sent` is in the workbook. What was typed since stays: it belongs to the next entry.
 *
 * @returns whether nothing was typed since, so that the form may put the cursor where it begins
 */
type BeginAnew<Value> = (sent: Value, next: Value) => boolean;

/** What the next entry begins with, and in the boxes that changed since one was sent what stands there now. */
function withTypedSince<Value>(sent: Value, now: Value, next: Value): Value {
  if (now === sent) return next;
  if (typeof now !== "object" || typeof sent !== "object" || now === null || sent === null) return now;
  const before = new Map<string, unknown>(Object.entries(sent));
  return { ...next, ...Object.fromEntries(Object.entries(now).filter(([box, typed]) => typed !== before.get(box))) };
}

export type KeptOptions = {
  /** Another page has filled the form in: that takes the place of what was kept, and is kept itself. */
  readonly isFilledIn?: boolean;
  /** Only where the form stands or what it is about: nobody misses it. */
  readonly isChoice?: boolean;
};

/**
 * As `useState` for what is typed into a form, kept under a name while the pane's window lives. What nobody has changed is not kept, so
 * that it follows the workbook.
 */
export function useKept<Value>(name: string, begin: () => Value, { isFilledIn = false, isChoice = false }: KeptOptions = {}): Kept<Value> {
  const { kept } = usePane();
  const [value, set] = useState<Value>(() => (isFilledIn ? begin() : ((kept.read(name) as Value | undefined) ?? begin())));
  const written = useRef<Value | undefined>(isFilledIn ? undefined : value);
  const [begun] = useState(() => ({ as: JSON.stringify(begin()) }));
  const now = useRef(value);
  useEffect(() => {
    now.current = value;
    if (value === written.current) return;
    written.current = value;
    kept.write(name, value, !isChoice && JSON.stringify(value) !== begun.as);
  }, [kept, name, value, isChoice, begun]);
  const beginAnew = useCallback<BeginAnew<Value>>(
    (sent, next) => {
      begun.as = JSON.stringify(next);
      set((typed) => withTypedSince(sent, typed, next));
      return now.current === sent;
    },
    [begun],
  );
  return [value, set, beginAnew];
}

/** What to say where the pane was opened anew while an entry was on its way into the workbook. */
const onItsWay = (table: string): string =>
  `The pane was opened anew while this was being entered. Look in ${table} whether it is there before you enter it again: else it would ` +
  "count twice.";

/**
 * Notes that what is kept under a name is on its way into the workbook. A pane that is opened anew meanwhile cannot know what became of
 * it, and says so beside what was typed; once it is there, it is kept no longer, from the same moment on.
 */
export function useSending(name: string, table: string) {
  const { kept } = usePane();
  const key = `${name}, on its way`;
  const [interrupted, setInterrupted] = useState<string | null>(() => (kept.read(key) === true ? onItsWay(table) : null));
  const sending = useCallback(
    (state: "begun" | "there" | "failed") => {
      if (state === "there") kept.write(name, undefined);
      kept.write(key, state === "begun" ? true : undefined);
      setInterrupted(null);
    },
    [kept, key, name],
  );
  return { interrupted, sending };
}
