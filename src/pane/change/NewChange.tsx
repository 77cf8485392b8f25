import { Field, Select } from "@fluentui/react-components";
import { useRef, useState, type FormEvent } from "react";
import { Button } from "../parts/Button";
import { workCautions } from "../../core/partialBudget/layouts/layout";
import type { SeasonReport } from "../../workbook/seasonReport";
import { addEntries, lostWords } from "../commands/addEntries";
import { failureWords } from "../failure";
import { Entry } from "../parts/Entry";
import { ToldLine, type Told } from "../parts/Told";
import { usePane } from "../paneContext";
import { useKept, useSending } from "../useKept";
import { useDecimalComma } from "../useDecimalComma";
import { AnswerPart } from "./AnswerPart";
import { changeDraftView, emptyChange, type ChangeDraft } from "./changeDraft";
import { groundOf, targetChoices, type Ground } from "./ground";
import type { LayoutForm } from "./defineLayout";
import { boxLabel, layoutForms } from "./layoutForms";
import { ProductRows } from "./ProductRows";

/** A new change: its layout, where it happens, its boxes, the answer while it is typed, and the rows at the end. */
export function NewChange({ report }: { readonly report: SeasonReport }) {
  const { changeStart } = usePane();
  const isBegun = changeStart !== null;
  const [layoutName, setLayout] = useKept<string>("new change, layout", () => changeStart?.layout ?? layoutForms[0]!.name, {
    isFilledIn: isBegun,
    isChoice: true,
  });
  const layout = layoutForms.find(({ name }) => name === layoutName) ?? layoutForms[0]!;
  const targets = targetChoices(report);
  const [wanted, want] = useKept("new change, where", () => changeStart?.target ?? "", { isFilledIn: isBegun, isChoice: true });
  const chosen = targets.find(({ value }) => value === wanted)?.value ?? targets[0]?.value;
  const ground = chosen === undefined ? null : groundOf(report, chosen);
  return (
    <div className="pn-form">
      <Field label="What is compared">
        <Select value={layout.name} onChange={(_, { value }) => setLayout(value)}>
          {layoutForms.map(({ name }) => (
            <option key={name}>{name}</option>
          ))}
        </Select>
      </Field>
      <Field label="Where">
        <Select value={chosen ?? ""} onChange={(_, { value }) => want(value)}>
          {targets.map(({ value, words }) => (
            <option key={value} value={value}>
              {words}
            </option>
          ))}
        </Select>
      </Field>
      {ground === null ? (
        <p>Enter a crop and a field of it first.</p>
      ) : (
        <LayoutBoxes
          key={`${layout.name} ${chosen}`}
          form={layout}
          ground={ground}
          begun={changeStart !== null && changeStart.layout === layout.name && changeStart.target === chosen ? changeStart.boxes : {}}
        />
      )}
    </div>
  );
}

type LayoutBoxesProps = {
  readonly form: LayoutForm;
  readonly ground: Ground;
  /** What another page has filled in, instead of what the season knows. */
  readonly begun: ChangeDraft;
};

function LayoutBoxes({ form, ground, begun }: LayoutBoxesProps) {
  const { host, watch, format, fault } = usePane();
  const keptAs = `new change, ${form.name}, ${JSON.stringify(ground.target)}`;
  const [typed, setTyped, beginAnew] = useKept<ChangeDraft>(keptAs, () => begun, { isFilledIn: Object.keys(begun).length > 0 });
  const { interrupted, sending } = useSending(keptAs, "Changes");
  const [countedIn, setCountedIn] = useState(false);
  const [wasTried, setTried] = useState(false);
  const [isSaving, setSaving] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const element = useRef<HTMLFormElement>(null);
  const decimalComma = useDecimalComma();
  // What is not typed over follows the season.
  const draft = { ...emptyChange(form, ground, decimalComma), ...typed };
  const view = changeDraftView(draft, form, ground, { decimalComma, countedIn });
  const faultOf = (name: string) => (wasTried || typed[name] ? view.faults[name] : undefined);
  const type = (name: string, value: string) => {
    setTold(null);
    setTyped((before) => ({ ...before, [name]: value }));
  };
  const box = (name: string, label: string, more: { hint?: string | undefined; required?: boolean; text?: boolean } = {}) => (
    <Entry
      key={name}
      label={label}
      value={draft[name] ?? ""}
      hint={more.hint}
      required={more.required ?? false}
      numeric={more.text !== true}
      fault={faultOf(name)}
      change={(value) => type(name, value)}
    />
  );
  const toReadFirst = workCautions(form.name);
  const save = async () => {
    const content = watch.state().reading?.content;
    if (view.rows === null || content === undefined) return;
    setSaving(true);
    sending("begun");
    const saved = await addEntries(host, content, "Changes", view.rows);
    sending(saved.ok ? "there" : "failed");
    setSaving(false);
    if (!saved.ok) return setTold({ tone: "failed", text: failureWords(saved.failure, "The change was not saved.") });
    const lost = lostWords(saved.value);
    setTold({ tone: "done", text: `“${draft["name"]}” was saved as ${view.rows.length} entries of the table Changes.${lost}` });
    beginAnew(typed, {});
    setTried(false);
    await watch.refresh();
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (isSaving) return;
    setTried(true);
    if (view.rows === null) requestAnimationFrame(() => element.current?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus());
    else save().catch(fault);
  };
  return (
    <form ref={element} className="pn-form" onSubmit={submit} noValidate aria-label="New change">
      {toReadFirst.length > 0 && (
        <ul className="pn-notice-list">
          {toReadFirst.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      )}
      {view.products !== null && (
        <ProductRows products={view.products} report={ground.report} draft={draft} fault={faultOf} change={type} />
      )}
      <div className="pn-boxes">
        {form.boxes.map((each) =>
          box(each.name, boxLabel(each, ground, format), { hint: each.hint, required: each.wanted?.needed ?? false }),
        )}
        {box("acres", format.areaUnit === "ac" ? "Acres a year" : "Hectares a year", { required: true })}
        {box("rate", "Interest a year, %", { hint: "on equipment kept more than a year" })}
      </div>
      {form.says !== undefined && (
        <output className="pn-says">
          {form.says(view.values, format, ground).map((words) => (
            <span key={words} className="pn-line">
              {words}
            </span>
          ))}
        </output>
      )}
      {view.made === null ? (
        <p className="pn-note" aria-live="polite">
          Fill the boxes marked needed, and what it takes to pay shows here; a yield gain may stay blank.
        </p>
      ) : (
        <AnswerPart
          change={view.made.layout.change}
          answer={view.made.answer}
          prices={ground.prices}
          lead={view.made.layout.lead}
          findings={view.made.layout.findings}
          cautions={view.made.layout.cautions}
        />
      )}
      {box("name", "Name of the change", { required: true, text: true })}
      <label className="pn-check">
        <input type="checkbox" checked={countedIn} onChange={() => setCountedIn(!countedIn)} /> Count this change in
      </label>
      {interrupted !== null && <p className="pn-fault">{interrupted}</p>}
      {wasTried && view.rows === null && (
        <p className="pn-fault">Not saved yet. {Object.keys(view.faults).length === 0 ? "" : "Fix the boxes marked."}</p>
      )}
      <Button type="submit" appearance="primary" disabledFocusable={isSaving}>
        {isSaving ? "Saving …" : "Save the change"}
      </Button>
      <ToldLine told={told} />
      <p className="pn-note">Saved as entries of the table Changes, where every line can be changed or struck out.</p>
    </form>
  );
}
