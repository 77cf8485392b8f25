import type { HybridShare } from "../../core/hybrids/shareOfAcres";
import type { Crop } from "../../core/season";
import { ownFieldsWords, spreadWords } from "../../workbook/hybridWords";
import { ownFields } from "../../workbook/ownFields";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Disclosure } from "../parts/Disclosure";
import { usePane } from "../paneContext";
import { FigureTable } from "../season/FigureTable";
import { ownSays } from "./hybridsView";

type HybridAcresProps = {
  readonly report: SeasonReport;
  readonly crop: Crop;
  readonly shares: readonly HybridShare[];
  /** "bu/ac" */
  readonly unit: string;
};

/** A crop's acres by hybrid and when each matures, and its own fields side by side, which are no trial. */
export function HybridAcres({ report, crop, shares, unit }: HybridAcresProps) {
  const { format } = usePane();
  const own = ownFields(report, crop.name);
  return (
    <>
      {shares.length > 0 && (
        <FigureTable
          caption={`${crop.name}: acres by hybrid`}
          corner="Hybrid"
          columns={[format.areaUnit, "share", "matures"]}
          rows={shares.map(({ hybrid, area, share, days, matures }) => ({
            name: `${hybrid ?? "none named"}${days === null ? "" : `, ${format.quantity(days)} days`}`,
            cells: [
              format.yield(area),
              format.percent(share),
              matures === null
                ? "–"
                : matures.first === matures.last
                  ? format.day(matures.first.slice(5))
                  : `${format.day(matures.first.slice(5))} to ${format.day(matures.last.slice(5))}`,
            ],
          }))}
        />
      )}
      {spreadWords(shares, (day) => format.day(day.slice(5))).map((words) => (
        <p key={words} className="pn-note">
          {words}
        </p>
      ))}
      {own.length > 0 && (
        <Disclosure look="line" label={`${crop.name}: own fields side by side, no trial`}>
          <p className="pn-note">{ownFieldsWords}</p>
          <ul className="pn-items">
            {own.map((each) => (
              <li key={each.field} className="pn-item">
                <div className="pn-total">
                  <span>{each.field}</span>
                  <span>
                    {format.yield(each.yield)} {unit}
                  </span>
                </div>
                <p className="pn-note">{ownSays(each, format)}</p>
              </li>
            ))}
          </ul>
        </Disclosure>
      )}
    </>
  );
}
