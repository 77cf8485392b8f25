import { useRef, useState } from "react";
import { Button } from "../parts/Button";
import { enterInRows } from "../commands/enterInRows";
import { changeColumns } from "../../workbook/columns/changes";
import { failureWords } from "../failure";
import { ToldLine, type Told } from "../parts/Told";
import { usePane } from "../paneContext";

const { columns } = changeColumns;

/** The one switch of a change: entered at once in its rows of the table Changes, so that the workbook and the pane never part. */
export function CountIn({ name, isCounted }: { readonly name: string; readonly isCounted: boolean }) {
  const { host, watch, fault } = usePane();
  /** What is being entered; `null`: nothing. */
  const [wanted, want] = useState<boolean | null>(null);
  const [told, setTold] = useState<Told>(null);
  const [lacks, setLacks] = useState<{ readonly table: string; readonly value: boolean } | null>(null);
  const box = useRef<HTMLInputElement>(null);
  const enter = async (value: boolean, addsColumn: boolean) => {
    want(value);
    setTold(null);
    const entered = await enterInRows(
      host,
      { table: changeColumns.table, named: columns.change, name, column: columns.countedIn, value: value ? "yes" : "no" },
      addsColumn,
    );
    setLacks(entered.ok || entered.lacks === undefined ? null : { table: entered.lacks.replaceAll("_", " "), value });
    if (entered.ok) {
      await watch.refresh();
      setTold({
        tone: "done",
        text:
          `${value ? "Counted in" : "No longer counted in"}: entered in ` +
          `${entered.value === 1 ? "its entry" : `its ${entered.value} entries`} of the table Changes.`,
      });
    } else {
      setTold({
        tone: "failed",
        text:
          entered.lacks === undefined
            ? failureWords(entered.failure, "Nothing was entered.")
            : `Nothing was entered. ${entered.failure.what} Add it yourself, or let it be added at the table's right end.`,
      });
    }
    want(null);
    // The button to add a column goes with its question; the focus stays beside it.
    if (addsColumn) box.current?.focus();
  };
  const turn = (value: boolean, addsColumn = false) => {
    if (wanted === null) enter(value, addsColumn).catch(fault);
  };
  return (
    <>
      <label className="pn-check">
        <input
          ref={box}
          type="checkbox"
          checked={wanted ?? isCounted}
          aria-disabled={wanted !== null}
          onChange={({ target }) => turn(target.checked)}
        />{" "}
        Count this change in
      </label>
      <ToldLine told={told} />
      {lacks !== null && (
        <p className="pn-buttons">
          <Button onClick={() => turn(lacks.value, true)}>{`Add the column ${columns.countedIn.heading} to ${lacks.table}`}</Button>
        </p>
      )}
    </>
  );
}
