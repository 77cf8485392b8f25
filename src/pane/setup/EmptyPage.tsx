import { lazy, Suspense, useState } from "react";
import { Button } from "../parts/Button";
import { inputTables } from "../../workbook/templates";
import type { SeasonReport } from "../../workbook/seasonReport";
import type { PageId } from "../page";
import { sameName } from "../commands/tableNamed";
import { OnItsWay } from "../OnItsWay";
import { helpAddress } from "../helpAddress";
import { Disclosure } from "../parts/Disclosure";
import { outcome } from "../failure";
import { failureNotice, usePane, type OpenDemo } from "../paneContext";
import { MakeTables } from "./MakeTables";
import { MatchPart } from "./MatchPart";

const HelpPage = lazy(() => import("../help/HelpPage").then((module) => ({ default: module.HelpPage })));
const StartForm = lazy(() => import("../start/StartForm").then((module) => ({ default: module.StartForm })));

/** Why somebody who asked for a page sees this one. */
const before: { readonly [Id in PageId]?: string } = {
  inputs: "There are no fields yet that a purchase could be for, so begin here.",
  lender: "There is nothing yet to show a lender, so begin here.",
};

/** A workbook without any table of ours: a rough budget first, and three other ways to begin; or the help, where that was asked for. */
export function EmptyPage({ report, page }: { readonly report: SeasonReport; readonly page: PageId }) {
  const { openDemo, open: openPage, tell, fault } = usePane();
  const [isOpening, setOpening] = useState(false);
  const look = async (open: OpenDemo) => {
    if (isOpening) return;
    setOpening(true);
    const opened = await outcome(open);
    setOpening(false);
    if (!opened.ok) tell(failureNotice(opened.failure, () => void look(open).catch(fault)));
    else if (opened.value !== null) tell({ tone: "done", text: opened.value });
  };
  if (page === "help")
    return (
      <div className="pn-body">
        <h1>Help</h1>
        <HelpPage report={report} problemsOf={null} />
      </div>
    );
  return (
    <div className="pn-body">
      <h1>Start: your own cost per acre</h1>
      {before[page] !== undefined && <p role="status">{before[page]}</p>}
      <p>A rough budget in three short steps. What is left blank counts as nothing and can come later.</p>
      <Suspense fallback={<OnItsWay />}>
        <StartForm report={report} />
      </Suspense>
      <section className="pn-card" aria-label="Other ways to begin">
        {openDemo !== undefined && (
          <Disclosure look="line" label="Look around a demo season first">
            <p>Opens a season of an invented farm, with all its tables filled in.</p>
            <Button disabledFocusable={isOpening} onClick={() => void look(openDemo).catch(fault)}>
              {isOpening ? "Opening …" : "Open the demo season"}
            </Button>
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
          <button type="button" className="pn-link" onClick={() => openPage("help")}>
            Help
          </button>
          , or{" "}
          <a className="pn-link" href={helpAddress()} target="_blank" rel="noreferrer">
            on a page of its own
          </a>
          .
        </p>
      </section>
    </div>
  );
}
