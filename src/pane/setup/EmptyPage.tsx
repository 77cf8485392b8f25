import { lazy, Suspense } from "react";
import { Button } from "../parts/Button";
import { inputTables } from "../../workbook/templates";
import type { SeasonReport } from "../../workbook/seasonReport";
import { sameName } from "../commands/tableNamed";
import { OnItsWay } from "../OnItsWay";
import { helpAddress } from "../helpAddress";
import { Disclosure } from "../parts/Disclosure";
import { usePane } from "../paneContext";
import { MakeTables } from "./MakeTables";
import { MatchPart } from "./MatchPart";

const StartForm = lazy(() => import("../start/StartForm").then((module) => ({ default: module.StartForm })));

/** A workbook without any table of ours: a rough budget first, and three other ways to begin. */
export function EmptyPage({ report }: { readonly report: SeasonReport }) {
  const { openDemo } = usePane();
  return (
    <div className="pn-body">
      <h1>Start: your own cost per acre</h1>
      <p>A rough budget in three short steps. What is left blank counts as nothing and can come later.</p>
      <Suspense fallback={<OnItsWay />}>
        <StartForm report={report} />
      </Suspense>
      <section className="pn-card" aria-label="Other ways to begin">
        {openDemo !== undefined && (
          <Disclosure look="line" label="Look around a demo season first">
            <p>Opens a season of an invented farm, with all its tables filled in.</p>
            <Button onClick={openDemo}>Open the demo season</Button>
          </Disclosure>
        )}
        <Disclosure look="line" label="Start with empty tables">
          <p>
            Makes the input tables, each on a sheet of its own, with nothing in it: each cell says what it is for as it is selected. What is
            in the workbook stays as it is.
          </p>
          <MakeTables tables={inputTables.filter(({ name }) => !sameName(name, "Matches"))} label="Make the input tables" />
        </Disclosure>
        <Disclosure look="line" label="Use sheets of your own" keeps>
          <MatchPart />
        </Disclosure>
        <p className="pn-note">
          <a className="pn-link" href={helpAddress()} target="_blank" rel="noreferrer">
            Help
          </a>
          , on a page of its own.
        </p>
      </section>
    </div>
  );
}
