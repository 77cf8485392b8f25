import { useState } from "react";
import { repairPlan, type NoRepairLine, type RepairLine } from "../../core/planter/repairPlan";
import type { PlanterRepair } from "../../core/planter/planterRepair";
import { budgetColumns } from "../../workbook/columns/budget";
import type { SeasonReport } from "../../workbook/seasonReport";
import { addEntries, lostWords } from "../commands/addEntries";
import { entryRow } from "../commands/entryRow";
import { failureWords } from "../failure";
import { Button } from "../parts/Button";
import { ToldLine, type Told } from "../parts/Told";
import { usePane } from "../paneContext";

type PlanRepairProps = { readonly report: SeasonReport; readonly planter: PlanterRepair };
const { columns } = budgetColumns;

const whyNot: Readonly<Record<NoRepairLine, string>> = {
  "not priced": "Not all of it has a price, so it is not offered for the plan yet.",
  "no acres": "It goes into the plan by the acres that it plants: name it as Machine in Operations first.",
  computed: "Machines computes repairs for this planter already, and parts are in them: planned once more they would count twice.",
  "planned otherwise":
    "Repairs of these fields are planned by other entries: rows, or a line of a field or of all fields. Add this to them yourself: " +
    "a line of the crop would take their place or be dropped.",
  "planned already": "It is in the plan: a line of repairs for each crop in Budget.",
};

/** Puts what is due into the plan, a line of the Budget for each crop that the planter goes over; or says why it cannot. */
export function PlanRepairButton({ report, planter }: PlanRepairProps) {
  const { host, watch, format, fault } = usePane();
  const [isWriting, setWriting] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const plan = repairPlan(report.season, report.figures.crops, planter);
  const add = async (lines: readonly RepairLine[]) => {
    const before = watch.state().reading;
    if (before === null) return;
    setWriting(true);
    setTold(null);
    const rows = lines.map(({ crop, amount }) =>
      entryRow([
        [columns.over, crop],
        [columns.kind, "repairs"],
        [columns.amount, amount],
        [columns.basis, "whole"],
        [columns.note, `${planter.machine}: parts and hours that are due`],
      ]),
    );
    const done = await addEntries(host, before.content, "Budget", rows);
    setWriting(false);
    setTold(
      done.ok
        ? { tone: "done", text: `Added to Budget: ${linesWords(lines)}.${lostWords(done.value)}` }
        : { tone: "failed", text: failureWords(done.failure, "Nothing was written.") },
    );
    if (done.ok) await watch.refresh();
  };
  const linesWords = (lines: readonly RepairLine[]) => lines.map(({ crop, amount }) => `${crop} ${format.amount(amount)}`).join(", ");
  return (
    <>
      {typeof plan === "string" && <p className="pn-note">{whyNot[plan]}</p>}
      {typeof plan !== "string" && plan.length > 0 && (
        <p className="pn-buttons">
          <Button
            disabledFocusable={isWriting}
            onClick={() => {
              if (!isWriting) add(plan).catch(fault);
            }}
          >
            {isWriting ? "Adding …" : `Into the plan: ${linesWords(plan)}`}
          </Button>
        </p>
      )}
      <ToldLine told={told} />
    </>
  );
}
