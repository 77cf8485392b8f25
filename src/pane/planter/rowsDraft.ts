/** A filled check sheet typed back in: one part down all rows of a planter, a box a row. */
import type { Item } from "../../core/season";
import { planterCheckColumns } from "../../workbook/columns/planterChecks";
import { plain } from "../../workbook/words";
import { entryRow, type EntryRow } from "../commands/entryRow";
import { Typed, type Faults } from "../parts/typed";

const { columns } = planterCheckColumns;

/** The most rows that a form asks for at once. */
const mostRowsTyped = 48;

export type RowsDraft = {
  readonly machine: string;
  readonly part: string;
  readonly whenNew: string;
  readonly replaceAt: string;
  readonly unit: string;
  readonly item: string;
  readonly hours: string;
  /** How many rows the planter has. */
  readonly rows: string;
  /** What was measured at each row; a blank one was not. */
  readonly measured: readonly string[];
};
export type RowsField = Exclude<keyof RowsDraft, "measured"> | `row ${number}`;

export const emptyRows = (machine: string): RowsDraft => ({
  machine,
  part: "",
  whenNew: "",
  replaceAt: "",
  unit: "",
  item: "",
  hours: "",
  rows: "",
  measured: [],
});

/** The same planter for the next part. */
export const nextPart = (draft: RowsDraft): RowsDraft => ({ ...emptyRows(draft.machine), rows: draft.rows });

export type RowsView = {
  readonly faults: Faults<RowsField>;
  /** How many boxes are shown. */
  readonly boxes: number;
  readonly says: string;
  /** `null` while there are faults, or nothing is measured. */
  readonly entries: readonly EntryRow[] | null;
};

export function rowsView(draft: RowsDraft, items: readonly Item[], decimalComma: boolean): RowsView {
  const { measured: typedRows, ...single } = draft;
  const typed = new Typed<RowsField>(
    { ...single, ...Object.fromEntries(typedRows.map((value, index) => [`row ${index + 1}`, value])) },
    decimalComma,
  );
  const { faults } = typed;
  if (draft.machine.trim() === "") faults.machine = "Name the planter.";
  if (draft.part.trim() === "") faults.part = "Name the part.";
  const item = draft.item.trim();
  if (item !== "" && !items.some(({ name }) => plain(name) === plain(item)))
    faults.item = `The table Items has no “${item}”. Add it there first, or leave this blank.`;
  const [whenNew, replaceAt, hours] = [typed.number("whenNew", { aboveZero: true }), typed.number("replaceAt"), typed.number("hours")];
  const rows = typed.number("rows", { needed: true, aboveZero: true });
  const isCount = rows !== null && rows.isInteger() && rows.lte(String(mostRowsTyped));
  if (rows !== null && !isCount) faults.rows = `Enter a whole number up to ${mostRowsTyped}.`;
  const boxes = isCount ? Number(rows.toFixed()) : 0;
  const measured = Array.from({ length: boxes }, (_, index) => typed.number(`row ${index + 1}`));
  const beyond = typedRows.slice(boxes).filter((value) => value.trim() !== "").length;
  if (isCount && beyond > 0) faults.rows = `${beyond} more ${beyond === 1 ? "row is" : "rows are"} filled in than the planter has.`;
  const filled = measured.filter((value) => value !== null).length;
  const isSound = Object.keys(faults).length === 0 && filled > 0;
  return {
    faults,
    boxes,
    says: boxes === 0 ? "" : `${filled} of ${boxes} rows measured. A blank row is not written.`,
    entries: !isSound
      ? null
      : measured.flatMap((value, index) =>
          value === null
            ? []
            : [
                entryRow([
                  [columns.machine, draft.machine.trim()],
                  [columns.row, String(index + 1)],
                  [columns.part, draft.part.trim()],
                  [columns.whenNew, whenNew],
                  [columns.replaceAt, replaceAt],
                  [columns.measured, value],
                  [columns.unit, draft.unit.trim()],
                  [columns.item, item],
                  [columns.hours, hours],
                ]),
              ],
        ),
  };
}
