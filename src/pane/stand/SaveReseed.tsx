import { useState } from "react";
import { Button } from "../parts/Button";
import { grainOf } from "../../core/partialBudget/grain";
import { reseedChange } from "../../core/partialBudget/layouts/reseedChange";
import type { ReseedAnswer, ReseedQuestion } from "../../core/reseed";
import type { FieldFigures } from "../../core/figures";
import { yearlyRate } from "../../core/numbers/units";
import type { SeasonReport } from "../../workbook/seasonReport";
import { addEntries } from "../commands/addEntries";
import { nameFaults } from "../change/changeDraft";
import { changeRows } from "../change/changeRows";
import { failureWords } from "../failure";
import { Entry } from "../parts/Entry";
import { ToldLine, type Told } from "../parts/Told";
import { usePane } from "../paneContext";

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
  const { host, watch, fault } = usePane();
  const [name, setName] = useState(`Replant ${field.field}${part === null ? "" : `, ${part}`}`);
  const [isSaving, setSaving] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const wrong = nameFaults(name.trim(), report).name;
  const crop = report.figures.crops.find((each) => each.crop === field.crop)!;
  const save = async () => {
    const content = watch.state().reading?.content;
    if (wrong !== undefined || content === undefined) return;
    setSaving(true);
    // Nothing in a reseeding serves for years, so that no interest is charged on it.
    const { change } = reseedChange(question, answer, {
      areaUnit: report.season.settings.areaUnit,
      yieldUnit: crop.yieldUnit,
      rate: yearlyRate("0"),
    });
    const rows = changeRows({
      change,
      name: name.trim(),
      layout: "Reseed",
      target: field.field,
      acres: question.area.eq(field.area) ? null : question.area,
      countedIn: false,
      areaUnit: report.season.settings.areaUnit,
      grain: grainOf(field.outlook.budget),
    });
    const saved = await addEntries(host, content, "Changes", rows);
    setSaving(false);
    if (!saved.ok) return setTold({ tone: "failed", text: failureWords(saved.failure, "The change was not saved.") });
    setTold({ tone: "done", text: `“${name.trim()}” was saved as ${rows.length} entries of the table Changes: see Changes to compare.` });
    await watch.refresh();
  };
  return (
    <div className="pn-form">
      <Entry
        label="Name of the change"
        value={name}
        fault={told === null ? wrong : undefined}
        change={(value) => {
          setTold(null);
          setName(value);
        }}
      />
      <p className="pn-buttons">
        <Button
          disabledFocusable={isSaving || wrong !== undefined}
          onClick={() => {
            if (!isSaving) save().catch(fault);
          }}
        >
          {isSaving ? "Saving …" : "Save it as a change"}
        </Button>
      </p>
      <ToldLine told={told} />
    </div>
  );
}
