import { useCallback, useEffect, useRef, useState, type Dispatch, type SetStateAction } from "react";
import { usePane } from "./paneContext";

/**
 * As `useState` for what is typed into a form, kept under a name while the pane's window lives. What nobody has changed is not kept, so
 * that it follows the workbook.
 *
 * @param isFilledIn another page has filled the form in: that takes the place of what was kept, and is kept itself
 */
export function useKept<Value>(name: string, begin: () => Value, isFilledIn = false): readonly [Value, Dispatch<SetStateAction<Value>>] {
  const { kept } = usePane();
  const [value, set] = useState<Value>(() => (isFilledIn ? begin() : ((kept.read(name) as Value | undefined) ?? begin())));
  const written = useRef<Value | undefined>(isFilledIn ? undefined : value);
  useEffect(() => {
    if (value === written.current) return;
    written.current = value;
    kept.write(name, value);
  }, [kept, name, value]);
  return [value, set];
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
