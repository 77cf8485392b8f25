import { reseedChange } from "../../core/partialBudget/layouts/reseedChange";
import type { ReseedAnswer, ReseedQuestion } from "../../core/reseed";
import type { FieldFigures } from "../../core/figures";
import { yearlyRate } from "../../core/numbers/units";
import type { SeasonReport } from "../../workbook/seasonReport";
import { SaveAsChange } from "../change/SaveAsChange";

export type SaveReseedProps = {
  readonly question: ReseedQuestion;
  readonly answer: ReseedAnswer;
  readonly field: FieldFigures;
  /** The part of it that is replanted, by name; `null`: all of it. */
  readonly part: string | null;
  readonly report: SeasonReport;
};

/** Saves the answer as a change, so that it stands beside the others on the page Weigh a change. */
export function SaveReseed({ question, answer, field, part, report }: SaveReseedProps) {
  const crop = report.figures.crops.find((each) => each.crop === field.crop)!;
  // Nothing in a reseeding serves for years, so that no interest is charged on it.
  const change = () =>
    reseedChange(question, answer, { areaUnit: report.season.settings.areaUnit, yieldUnit: crop.yieldUnit, rate: yearlyRate("0") }).change;
  return (
    <div className="pn-form">
      <SaveAsChange
        suggested={`Replant ${field.field}${part === null ? "" : `, ${part}`}`}
        layout="Reseed"
        change={change}
        field={field}
        acres={question.area.eq(field.area) ? null : question.area}
        report={report}
      />
    </div>
  );
}
