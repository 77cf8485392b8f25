import { useState } from "react";
import type { Field } from "../../core/season";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Entry } from "../parts/Entry";
import { FileForm, UnitOfFile } from "../parts/FileForm";
import { Segments } from "../parts/Segments";
import { usePane } from "../paneContext";
import { today } from "../today";
import { useDecimalComma } from "../useDecimalComma";
import { emptyCount, lengthUnits } from "./countDraft";
import { fileSpotsView, sizeUnits, type FileSpotsBox, type FileSpotsDraft, type SizeUnit } from "./fileSpots";

const unitWords: Readonly<Record<SizeUnit, string>> = { "in and ft": "inches and feet", "cm and m": "centimeters and meters" };

/** Spots from a file of points or of a phone, chosen or pasted: they become entries of the table Stand counts in one step. */
export function FileSpotsForm({ field, report }: { readonly field: Field; readonly report: SeasonReport }) {
  const { format } = usePane();
  const decimalComma = useDecimalComma();
  const [draft, setDraft] = useState<FileSpotsDraft>(() => {
    const { rowWidth, length, date } = emptyCount(today(), field, format.areaUnit, decimalComma);
    return { text: "", unit: null, how: "length", rowWidth, length, hoop: "", date };
  });
  const view = fileSpotsView(draft, field, report.season, decimalComma);
  const { across, along } = lengthUnits[format.areaUnit];
  const set = (of: Partial<FileSpotsDraft>) => setDraft((before) => ({ ...before, ...of }));
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
    <FileForm
      name="Spots from a file"
      files="A file of points (GeoJSON) or of a phone (comma-separated)"
      accept=".geojson,.json,.csv,.txt,application/geo+json,text/csv"
      text={draft.text}
      take={(text) => set({ text })}
      view={view}
      table="Stand counts"
      things={["One spot", "spots"]}
    >
      {view.asks.unit && (
        <UnitOfFile
          label="Its widths and lengths are in"
          units={sizeUnits}
          words={unitWords}
          chosen={draft.unit}
          choose={(unit) => set({ unit })}
        />
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
    </FileForm>
  );
}
