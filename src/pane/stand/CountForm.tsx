import { useRef, useState, type FormEvent } from "react";
import { Button } from "../parts/Button";
import type { Field } from "../../core/season";
import { standCountColumns } from "../../workbook/columns/standCounts";
import { addEntries, lostWords } from "../commands/addEntries";
import { failureWords } from "../failure";
import { Disclosure } from "../parts/Disclosure";
import { Entry } from "../parts/Entry";
import { Segments } from "../parts/Segments";
import { ToldLine, type Told } from "../parts/Told";
import { usePane } from "../paneContext";
import { useKept, useSending } from "../useKept";
import { today } from "../today";
import { useDecimalComma } from "../useDecimalComma";
import { countView, emptyCount, lengthUnits, nextCount, type CountDraft, type CountField } from "./countDraft";
import { HereButton } from "./HereButton";
import { standChanged } from "./standChanged";

const { columns } = standCountColumns;

export type CountFormProps = { readonly field: Field };

/** One place counted: typed, checked, added as a row of Stand counts; the next place is measured out the same way. */
export function CountForm({ field }: CountFormProps) {
  const { host, watch, format, fault } = usePane();
  const decimalComma = useDecimalComma();
  const keptAs = `count of ${field.name}`;
  const [draft, setDraft, beginAnew] = useKept<CountDraft>(keptAs, () => emptyCount(today(), field, format.areaUnit, decimalComma));
  const { interrupted, sending } = useSending(keptAs, "Stand counts");
  const [wasTried, setTried] = useState(false);
  const [isAdding, setAdding] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const form = useRef<HTMLFormElement>(null);
  const { faults, says, row } = countView(draft, field, decimalComma, format);
  const { across, along } = lengthUnits[format.areaUnit];

  const add = async () => {
    const before = watch.state().reading;
    if (row === null || before === null) return;
    setAdding(true);
    sending("begun");
    const added = await addEntries(host, before.content, "Stand counts", [row]);
    sending(added.ok ? "there" : "failed");
    if (!added.ok) {
      setAdding(false);
      setTold({ tone: "failed", text: failureWords(added.failure, "The count was not added.") });
      return;
    }
    const isUntouched = beginAnew(draft, nextCount(draft));
    setTried(false);
    const after = await watch.refresh();
    setAdding(false);
    const lost = lostWords(added.value);
    setTold(
      after.ok
        ? { tone: "done", text: `The count was added.${lost} ${standChanged(before.report, after.value.report, field.name, format)}` }
        : { tone: "failed", text: `The count was added,${lost} but the workbook could not be read again. ${after.failure.what}` },
    );
    if (isUntouched) form.current?.querySelector<HTMLInputElement>("[data-plants] input")?.focus();
  };
  const typed = (degrees: string) => (decimalComma ? degrees.replace(".", ",") : degrees);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (isAdding) return;
    setTried(true);
    setTold(null);
    if (row === null) requestAnimationFrame(() => form.current?.querySelector<HTMLElement>("[aria-invalid=true]")?.focus());
    else add().catch(fault);
  };
  const box = (of: CountField, label: string, more: { required?: boolean; numeric?: boolean; type?: "date" } = {}) => (
    <Entry
      label={label}
      value={draft[of]}
      fault={wasTried || draft[of] !== "" ? faults[of] : undefined}
      {...more}
      change={(value) => {
        setTold(null);
        setDraft((before) => ({ ...before, [of]: value }));
      }}
    />
  );
  return (
    <form ref={form} className="pn-form" onSubmit={submit} noValidate aria-label="Add a count">
      {box("date", columns.date.heading, { required: true, type: "date" })}
      <Segments
        legend="Counted along"
        chosen={draft.how}
        choose={(how) => setDraft((before) => ({ ...before, how }))}
        choices={[
          { value: "length", name: "a length of row" },
          { value: "hoop", name: "inside a hoop" },
        ]}
      />
      {draft.how === "length" ? (
        <div className="pn-pair">
          {box("rowWidth", `Row width, ${across}`, { required: true, numeric: true })}
          {box("length", `Length of row, ${along}`, { required: true, numeric: true })}
        </div>
      ) : (
        box("hoop", `Diameter of the hoop, ${across}`, { required: true, numeric: true })
      )}
      <div className="pn-pair" data-plants="">
        {box("plants", columns.plants.heading, { required: true, numeric: true })}
        {box("weak", columns.weak.heading, { numeric: true })}
      </div>
      {box("remark", columns.remark.heading)}
      <Disclosure look="line" label="Part of the field, latitude and longitude" keeps>
        <div className="pn-pair">
          {box("part", columns.part.heading)}
          {box("partAcres", format.areaUnit === "ac" ? "Acres of the part" : "Hectares of the part", { numeric: true })}
        </div>
        {box("partPlanted", "Part planted, where not with the field", { type: "date" })}
        <div className="pn-pair">
          {box("latitude", columns.latitude.heading)}
          {box("longitude", columns.longitude.heading)}
        </div>
        <HereButton
          take={(latitude, longitude) => setDraft((before) => ({ ...before, latitude: typed(latitude), longitude: typed(longitude) }))}
        />
      </Disclosure>
      <output className="pn-says">{says}</output>
      {interrupted !== null && <p className="pn-fault">{interrupted}</p>}
      {wasTried && row === null && <p className="pn-fault">Not added yet. Fix the boxes marked.</p>}
      <Button type="submit" appearance="primary" disabledFocusable={isAdding}>
        {isAdding ? "Adding …" : "Add the count"}
      </Button>
      <ToldLine told={told} />
    </form>
  );
}
