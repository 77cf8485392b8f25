import { useState } from "react";
import type { FieldFigures } from "../../core/figures";
import { grainOf } from "../../core/partialBudget/grain";
import type { Area } from "../../core/numbers/units";
import type { SeasonReport } from "../../workbook/seasonReport";
import { addEntries } from "../commands/addEntries";
import { failureWords } from "../failure";
import { Button } from "../parts/Button";
import { Entry } from "../parts/Entry";
import { ToldLine, type Told } from "../parts/Told";
import { usePane } from "../paneContext";
import { nameFaults } from "./changeDraft";
import { changeRows } from "./changeRows";

type Changed = Parameters<typeof changeRows>[0];

export type SaveAsChangeProps = {
  /** The name that is offered. */
  readonly suggested: string;
  readonly layout: Changed["layout"];
  /** Made when it is saved. */
  readonly change: () => Changed["change"];
  readonly field: FieldFigures;
  /** Of the field that it concerns; `null`: all of it. */
  readonly acres: Area | null;
  readonly report: SeasonReport;
};

/** Saves an answer of another page as a change of a field under a name, so that it stands beside the others. */
export function SaveAsChange({ suggested, layout, change, field, acres, report }: SaveAsChangeProps) {
  const { host, watch, fault } = usePane();
  const [name, setName] = useState(suggested);
  const [isSaving, setSaving] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const wrong = nameFaults(name.trim(), report).name;
  const save = async () => {
    const content = watch.state().reading?.content;
    if (wrong !== undefined || content === undefined) return;
    setSaving(true);
    const rows = changeRows({
      change: change(),
      name: name.trim(),
      layout,
      target: field.field,
      acres,
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
    <>
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
    </>
  );
}
