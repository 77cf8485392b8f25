import { useRef, useState } from "react";
import { Button } from "./Button";
import { enterInRows, type RowsEntry } from "../commands/enterInRows";
import { failureWords } from "../failure";
import { usePane } from "../paneContext";
import { ToldLine, type Told } from "./Told";

export type KeepButtonProps = {
  readonly label: string;
  /** What is entered; `null` while the workbook says the same: the button then stays, so that the focus does, and does nothing. */
  readonly entry: RowsEntry | null;
  /** What is said once it is entered in so many rows. */
  readonly done: (rows: number) => string;
  readonly kept?: () => void;
};

/** Enters what was tried in the pane into the grower's own table, where it can be seen. */
export function KeepButton({ label, entry, done, kept }: KeepButtonProps) {
  const { host, watch, fault } = usePane();
  const [isKeeping, setKeeping] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const [lacks, setLacks] = useState<string | null>(null);
  const buttons = useRef<HTMLParagraphElement>(null);
  const keep = async (what: RowsEntry, addsColumn = false) => {
    setKeeping(true);
    setTold(null);
    const entered = await enterInRows(host, what, addsColumn);
    setKeeping(false);
    setLacks(entered.ok ? null : (entered.lacks ?? null));
    // The button to add a column goes with its question; the focus stays beside it.
    if (addsColumn) buttons.current?.querySelector("button")?.focus();
    if (!entered.ok)
      return setTold({
        tone: "failed",
        text:
          entered.lacks === undefined
            ? failureWords(entered.failure, "Nothing was entered.")
            : `Nothing was entered. ${entered.failure.what} Add it yourself, or let it be added at the table's right end.`,
      });
    await watch.refresh();
    kept?.();
    setTold({ tone: "done", text: done(entered.value) });
  };
  return (
    <>
      <p ref={buttons} className="pn-buttons">
        <Button
          disabledFocusable={isKeeping || entry === null}
          onClick={() => {
            if (!isKeeping && entry !== null) keep(entry).catch(fault);
          }}
        >
          {isKeeping ? "Entering …" : entry === null ? "As it is in the workbook" : label}
        </Button>
      </p>
      <ToldLine told={entry !== null && told?.tone === "done" ? null : told} />
      {entry !== null && lacks !== null && (
        <p className="pn-buttons">
          <Button
            disabledFocusable={isKeeping}
            onClick={() => {
              if (!isKeeping) keep(entry, true).catch(fault);
            }}
          >{`Add the column ${entry.column} to ${lacks.replaceAll("_", " ")}`}</Button>
        </p>
      )}
    </>
  );
}
