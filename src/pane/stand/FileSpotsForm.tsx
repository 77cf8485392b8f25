import { Field as FluentField, Select, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import type { Field } from "../../core/season";
import type { SeasonReport } from "../../workbook/seasonReport";
import { addEntries, lostWords } from "../commands/addEntries";
import { failureWords } from "../failure";
import { Button } from "../parts/Button";
import { Entry } from "../parts/Entry";
import { Segments } from "../parts/Segments";
import { ToldLine, type Told } from "../parts/Told";
import { usePane } from "../paneContext";
import { today } from "../today";
import { useDecimalComma } from "../useDecimalComma";
import { emptyCount, lengthUnits } from "./countDraft";
import { fileSpotsView, sizeUnits, type FileSpotsBox, type FileSpotsDraft, type SizeUnit } from "./fileSpots";

const unitWords: Readonly<Record<SizeUnit, string>> = { "in and ft": "inches and feet", "cm and m": "centimeters and meters" };

/** Spots from a file of points or of a phone, chosen or pasted: they become entries of the table Stand counts in one step. */
export function FileSpotsForm({ field, report }: { readonly field: Field; readonly report: SeasonReport }) {
  const { host, watch, format, fault } = usePane();
  const decimalComma = useDecimalComma();
  const [draft, setDraft] = useState<FileSpotsDraft>(() => {
    const { rowWidth, length, date } = emptyCount(today(), field, format.areaUnit, decimalComma);
    return { text: "", unit: null, how: "length", rowWidth, length, hoop: "", date };
  });
  const [isAdding, setAdding] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const view = fileSpotsView(draft, field, report.season, decimalComma);
  const { across, along } = lengthUnits[format.areaUnit];
  const set = (of: Partial<FileSpotsDraft>) => {
    setTold(null);
    setDraft((before) => ({ ...before, ...of }));
  };
  const open = async (file: File | undefined) => {
    if (file !== undefined) set({ text: await file.text() });
  };
  const add = async () => {
    const content = watch.state().reading?.content;
    if (view.rows === null || content === undefined) return;
    setAdding(true);
    const added = await addEntries(host, content, "Stand counts", view.rows);
    if (added.ok) await watch.refresh();
    setAdding(false);
    if (!added.ok) return setTold({ tone: "failed", text: failureWords(added.failure, "The spots were not added.") });
    set({ text: "" });
    setTold({
      tone: "done",
      text: `${view.rows.length === 1 ? "One spot was" : `${view.rows.length} spots were`} added.${lostWords(added.value)}`,
    });
  };
  const box = (of: FileSpotsBox, label: string) => (
    <Entry
      label={label}
      value={draft[of]}
      fault={view.faults[of]}
      {...(of === "date" ? { type: "date" as const } : { numeric: true })}
      change={(value) => set({ [of]: value })}
    />
  );
  return (
    <form
      className="pn-form"
      aria-label="Spots from a file"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (!isAdding) add().catch(fault);
      }}
    >
      <label className="pn-file">
        A file of points (GeoJSON) or of a phone (comma-separated)
        <input
          type="file"
          accept=".geojson,.json,.csv,.txt,application/geo+json,text/csv"
          onChange={({ target }) => void open(target.files?.[0]).catch(fault)}
        />
      </label>
      <FluentField label="Or its lines, headings and all">
        <Textarea rows={4} value={draft.text} onChange={(_, { value }) => set({ text: value })} />
      </FluentField>
      {view.asks.unit && (
        <FluentField label="Its widths and lengths are in">
          <Select value={draft.unit ?? ""} onChange={(_, { value }) => set({ unit: sizeUnits.find((each) => each === value) ?? null })}>
            <option value="">choose</option>
            {sizeUnits.map((unit) => (
              <option key={unit} value={unit}>
                {format.words(unitWords[unit])}
              </option>
            ))}
          </Select>
        </FluentField>
      )}
      {view.asks.date && box("date", "Counted on")}
      {view.asks.size && (
        <>
          <Segments
            legend="Each spot was counted along"
            chosen={draft.how}
            choose={(how) => set({ how })}
            choices={[
              { value: "length", name: "a length of row" },
              { value: "hoop", name: "inside a hoop" },
            ]}
          />
          {draft.how === "length" ? (
            <div className="pn-pair">
              {box("rowWidth", `Row width, ${across}`)}
              {box("length", `Length of row, ${along}`)}
            </div>
          ) : (
            box("hoop", `Diameter of the hoop, ${across}`)
          )}
        </>
      )}
      <output className="pn-says">
        {view.says.map((words) => (
          <span key={words} className="pn-line">
            {words}
          </span>
        ))}
      </output>
      {view.fault !== null && <p className="pn-fault">{view.fault}</p>}
      <Button type="submit" appearance="primary" disabledFocusable={isAdding || view.rows === null}>
        {isAdding ? "Adding …" : "Add the spots"}
      </Button>
      <ToldLine told={told} />
    </form>
  );
}
