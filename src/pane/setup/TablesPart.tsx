import { hintWords, type InputTable } from "../../workbook/inputTable";
import type { SeasonReport } from "../../workbook/seasonReport";
import { inputTables } from "../../workbook/templates";
import { sameName } from "../commands/tableNamed";
import type { Format } from "../format";
import { Disclosure } from "../parts/Disclosure";
import { usePane } from "../paneContext";
import { MakeTables } from "./MakeTables";
import { MatchPart } from "./MatchPart";

export type TablesPartProps = { readonly report: SeasonReport };

/** The tables that the workbook lacks, and matching a range of one's own. */
export function TablesPart({ report }: TablesPartProps) {
  const { open, format } = usePane();
  const found = [...report.tablesFound];
  const missing = inputTables.filter(({ name }) => !sameName(name, "Matches") && !found.some((each) => sameName(each, name)));
  return (
    <section className="pn-card" aria-label="Tables">
      <Disclosure look="section" label="Tables" keeps>
        <p>
          <button type="button" className="pn-link" onClick={() => open("start")}>
            Start a rough budget
          </button>{" "}
          for another crop: three short steps.
        </p>
        {missing.length === 0 ? (
          <p>The workbook has every table that Pennyacre reads.</p>
        ) : (
          <>
            <p>Not in this workbook: {missing.map(({ sheet }) => sheet).join(", ")}. Make one when you have something to enter in it.</p>
            <MakeTables
              tables={missing}
              label={missing.length === 1 ? `Make ${missing[0]!.sheet}` : `Make these ${missing.length} tables`}
            />
          </>
        )}
        <Disclosure look="line" label="What the columns hold">
          {inputTables
            .filter(({ name }) => name !== "Matches")
            .map((table) => (
              <ColumnHints key={table.name} table={table} words={format.words} />
            ))}
        </Disclosure>
        <Disclosure look="line" label="Match a range of your own" keeps>
          <MatchPart />
        </Disclosure>
      </Disclosure>
    </section>
  );
}

/** The hints of a table's columns, for hosts and tables that show none as a cell is selected. */
const ColumnHints = ({ table, words }: { readonly table: InputTable; readonly words: Format["words"] }) => (
  <Disclosure look="line" label={table.sheet}>
    <dl className="pn-hints">
      {table.columns.map((column) => (
        <div key={column.heading}>
          <dt>{words(column.heading)}</dt>
          <dd>{words(hintWords(column))}</dd>
        </div>
      ))}
    </dl>
  </Disclosure>
);
