import { useRef, useState, type FormEvent, type KeyboardEvent } from "react";
import { planterParts } from "../../workbook/planterParts";
import { addEntries, lostWords } from "../commands/addEntries";
import { failureWords } from "../failure";
import { Button } from "../parts/Button";
import { Entry } from "../parts/Entry";
import { PickBox } from "../parts/PickBox";
import { ToldLine, type Told } from "../parts/Told";
import { usePane } from "../paneContext";
import { useKept, useSending } from "../useKept";
import { useDecimalComma } from "../useDecimalComma";
import type { SeasonReport } from "../../workbook/seasonReport";
import { emptyRows, nextPart, rowsView, type RowsDraft, type RowsField } from "./rowsDraft";

export type RowsFormProps = { readonly report: SeasonReport; readonly machine: string };

/** A filled check sheet typed back in: one part, a box for each row; Enter goes to the next row. */
export function RowsForm({ report, machine }: RowsFormProps) {
  const { host, watch, fault } = usePane();
  const decimalComma = useDecimalComma();
  const keptAs = `checks of ${machine}`;
  const [draft, setDraft, beginAnew] = useKept<RowsDraft>(keptAs, () => emptyRows(machine));
  const { interrupted, sending } = useSending(keptAs, "Planter checks");
  const [wasTried, setTried] = useState(false);
  const [isAdding, setAdding] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const form = useRef<HTMLFormElement>(null);
  const { faults, boxes, says, entries } = rowsView(draft, report.season.items, decimalComma);

  const add = async () => {
    const before = watch.state().reading;
    if (entries === null || before === null) return;
    setAdding(true);
    sending("begun");
    const added = await addEntries(host, before.content, "Planter checks", entries);
    sending(added.ok ? "there" : "failed");
    if (added.ok) await watch.refresh();
    setAdding(false);
    if (!added.ok) return setTold({ tone: "failed", text: failureWords(added.failure, "The rows were not added.") });
    const lost = lostWords(added.value);
    setTold({ tone: "done", text: `${draft.part.trim()}: ${entries.length} rows added.${lost}` });
    const isUntouched = beginAnew(draft, nextPart(draft));
    setTried(false);
    if (isUntouched) form.current?.querySelector<HTMLInputElement>("[data-part] input")?.focus();
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (isAdding) return;
    setTried(true);
    setTold(null);
    if (entries === null) requestAnimationFrame(() => form.current?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus());
    else add().catch(fault);
  };
  const set = (of: Exclude<RowsField, `row ${number}`>) => (value: string) => {
    setTold(null);
    setDraft((before) => ({ ...before, [of]: value }));
  };
  const faultOf = (of: RowsField, value: string) => (wasTried || value !== "" ? faults[of] : undefined);
  const box = (
    of: Exclude<RowsField, `row ${number}`>,
    label: string,
    more: { required?: boolean; numeric?: boolean; hint?: string } = {},
  ) => <Entry label={label} value={draft[of]} fault={faultOf(of, draft[of])} {...more} change={set(of)} />;
  const toNextRow = (event: KeyboardEvent<HTMLDivElement>) => {
    if (event.key !== "Enter") return;
    const inputs = [...event.currentTarget.querySelectorAll("input")];
    const next = inputs[inputs.indexOf(event.target as HTMLInputElement) + 1];
    // Behind the last row Enter adds them, as in every form.
    if (next === undefined) return;
    event.preventDefault();
    next.focus();
  };
  return (
    <form ref={form} className="pn-form" onSubmit={submit} noValidate aria-label="Type one part of all rows">
      {box("machine", "Planter", { required: true })}
      <div data-part="">
        <PickBox
          label="Part"
          value={draft.part}
          required
          choices={planterParts.filter(({ of }) => of === "each").map(({ part }) => part)}
          fault={faultOf("part", draft.part)}
          change={set("part")}
        />
      </div>
      <div className="pn-pair">
        {box("whenNew", "Size when new", { numeric: true })}
        {box("replaceAt", "Replace at", { numeric: true, hint: "as the operator's manual says" })}
      </div>
      <div className="pn-pair">
        {box("unit", "Unit")}
        {box("hours", "Shop hours a row", { numeric: true })}
      </div>
      <PickBox
        label="Item to buy for a row"
        value={draft.item}
        choices={report.season.items.map(({ name }) => name)}
        fault={faultOf("item", draft.item)}
        change={set("item")}
      />
      {box("rows", "Rows of the planter", { required: true, numeric: true })}
      {boxes > 0 && (
        <div className="pn-rows-typed" role="group" aria-label="Measured, row by row" onKeyDown={toNextRow}>
          {Array.from({ length: boxes }, (_, index) => {
            const value = draft.measured[index] ?? "";
            return (
              <Entry
                key={index}
                label={`Row ${index + 1}`}
                numeric
                value={value}
                fault={faultOf(`row ${index + 1}`, value)}
                change={(typed) => {
                  setTold(null);
                  setDraft((before) => ({
                    ...before,
                    measured: Array.from({ length: Math.max(before.measured.length, index + 1) }, (_each, at) =>
                      at === index ? typed : (before.measured[at] ?? ""),
                    ),
                  }));
                }}
              />
            );
          })}
        </div>
      )}
      <output className="pn-says">{says}</output>
      {interrupted !== null && <p className="pn-fault">{interrupted}</p>}
      {wasTried && entries === null && (
        <p className="pn-fault">
          {Object.keys(faults).length > 0 ? "Not added yet. Fix the boxes marked." : "Not added yet. Enter what was measured."}
        </p>
      )}
      <Button type="submit" appearance="primary" disabledFocusable={isAdding}>
        {isAdding ? "Adding …" : "Add the rows"}
      </Button>
      <ToldLine told={told} />
    </form>
  );
}
