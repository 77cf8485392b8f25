import { Button } from "@fluentui/react-components";
import { inputTables } from "../../workbook/templates";
import { sameName } from "../commands/tableNamed";
import { Disclosure } from "../parts/Disclosure";
import { usePane } from "../paneContext";
import { MakeTables } from "./MakeTables";
import { MatchPart } from "./MatchPart";

/** A workbook without any table of ours: three ways to begin. */
export function EmptyPage() {
  const { openDemo } = usePane();
  return (
    <div className="pn-body">
      <h1>Begin a season</h1>
      <p>Pennyacre reads tables of this workbook: crops, fields, what is bought, what is done. It tells what an acre costs now and what yield and price pay for it. This workbook has none of these tables yet.</p>
      <section className="pn-card">
        <h2>Start with empty tables</h2>
        <p>Makes the input tables, each on a sheet of its own, without a row: each cell says what it is for as it is selected. What is in the workbook stays as it is. Excel may not be able to undo new sheets.</p>
        <MakeTables tables={inputTables.filter(({ name }) => !sameName(name, "Matches"))} label="Make the input tables" isMain />
      </section>
      {openDemo !== undefined && (
        <section className="pn-card">
          <h2>Look around first</h2>
          <p>Opens a season of an invented farm, with all its tables filled in.</p>
          <Button onClick={openDemo}>Open the demo season</Button>
        </section>
      )}
      <section className="pn-card">
        <h2>Use sheets of your own</h2>
        <Disclosure look="line" label="Match a range of your own" keeps><MatchPart /></Disclosure>
      </section>
    </div>
  );
}
