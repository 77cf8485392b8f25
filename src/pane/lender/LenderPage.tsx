import { useState } from "react";
import { layerCosts, layerNames, layers } from "../../core/kinds";
import { toFix } from "../../workbook/problem";
import { lenderNotices } from "../../workbook/sheets/lender/notes";
import type { PageProps } from "../page";
import { Disclosure } from "../parts/Disclosure";
import { Incomplete } from "../parts/Incomplete";
import { Lines } from "../parts/Lines";
import { Segments } from "../parts/Segments";
import { WriteButton } from "../parts/WriteButton";
import { usePane } from "../paneContext";
import { FigureTable } from "../season/FigureTable";
import { today } from "../today";
import { companions, firstChoice, lenderPreview, sheetsOf, type LenderChoice } from "./lenderView";

/** Says what a lender asks first, writes the pages, and shows the key figures; what goes onto them is chosen under a fold. */
export function LenderPage({ report }: PageProps) {
  const { format } = usePane();
  const [left, leave] = useState<ReadonlySet<string>>(new Set());
  const [choice, setChoice] = useState<Pick<LenderChoice, "layer" | "companions">>(() => firstChoice(report));
  const all = report.figures.crops.map(({ crop }) => crop);
  const crops = all.filter((crop) => !left.has(crop));
  if (all.length === 0) return <p>There is no crop to show a lender yet: enter one in the table Crops, and a field of it in Fields.</p>;
  const chosen = { ...choice, crops };
  const preview = lenderPreview(report, chosen, format);
  const notices = lenderNotices(report);
  const date = today();
  const beside = [...choice.companions];
  return (
    <>
      <section className="pn-card" aria-label="What a lender asks first">
        <header>
          <h3>Can it be paid back?</h3>
        </header>
        <p className="pn-main">
          <span className={preview.main.isShort ? "pn-figure pn-loss" : "pn-figure"}>{preview.main.figure}</span>{" "}
          <span className="pn-unit">{preview.main.unit}</span>
        </p>
        <Incomplete of={{ of: "farm" }} problems={toFix(report.problems).length} />
        {preview.short !== "" && (
          <p>
            <strong>{preview.short}</strong>
          </p>
        )}
        {notices.length === 0 ? (
          <p>Nothing else stands out that a lender would ask about first.</p>
        ) : (
          <>
            <p>A lender would ask about this first:</p>
            <ul className="pn-notice-list">
              {notices.map(({ words }) => (
                <li key={words}>{format.words(words)}</li>
              ))}
            </ul>
          </>
        )}
      </section>
      <section className="pn-card" aria-label="Write">
        <WriteButton
          isMain
          label="Write the lender pages"
          sheets={() => sheetsOf(report, chosen, date)}
          after={`as of ${format.day(date)}`}
          opens
          {...(crops.length === 0 && { hold: "Nothing was written. Choose a crop first." })}
        />
        <p className="pn-note">
          Two pages to print, as of {format.day(date)}, with{" "}
          {beside.length === 0 ? "no sheet beside them" : `${beside.length === 1 ? "the sheet" : "the sheets"} ${beside.join(", ")}`}; made
          again each time.
        </p>
        <Disclosure look="line" label="Choose crops, layer and sheets" keeps>
          <fieldset className="pn-checks">
            <legend>Crops</legend>
            {all.map((crop) => (
              <Check key={crop} label={crop} isOn={!left.has(crop)} turn={() => leave(flipped(left, crop))} />
            ))}
          </fieldset>
          <Segments
            legend="Cost layer of the tables"
            choices={layers.map((value) => ({ value, name: layerNames[value] }))}
            chosen={choice.layer}
            choose={(layer) => setChoice({ ...choice, layer })}
          />
          <fieldset className="pn-checks">
            <legend>Sheets beside the lender pages</legend>
            {companions.map((name) => (
              <Check
                key={name}
                label={name}
                isOn={choice.companions.has(name)}
                turn={() => setChoice({ ...choice, companions: flipped(choice.companions, name) })}
              />
            ))}
          </fieldset>
        </Disclosure>
      </section>
      <section className="pn-card" aria-label="Key figures">
        <header>
          <h3>Key figures</h3>
          <span className="pn-note">
            {layerCosts[choice.layer]}, {format.currency}, at the price entered
          </span>
        </header>
        {preview.crops.map(({ columns, rows }) => (
          <FigureTable key={columns[0]} caption={`Projected, ${layerCosts[choice.layer]}`} columns={columns} rows={rows} />
        ))}
        <Lines lines={preview.farm} />
      </section>
    </>
  );
}

const flipped = <Name extends string>(names: ReadonlySet<Name>, name: Name): ReadonlySet<Name> => {
  const next = new Set(names);
  if (!next.delete(name)) next.add(name);
  return next;
};

const Check = ({ label, isOn, turn }: { readonly label: string; readonly isOn: boolean; readonly turn: () => void }) => (
  <label className="pn-check">
    <input type="checkbox" checked={isOn} onChange={turn} /> {label}
  </label>
);
