import { useMemo } from "react";
import { layerCosts } from "../../core/kinds";
import type { PageProps } from "../page";
import { WarningMark } from "../parts/Incomplete";
import { usePane } from "../paneContext";
import { FieldPage } from "./FieldPage";
import { fieldRows } from "./fieldsView";
import { HarvestedFieldsPart } from "./HarvestedFieldsPart";

/** Every field, worst first; a field opens to its own page. */
export function FieldsPage({ report }: PageProps) {
  const { format, layer, field, showField } = usePane();
  const rows = useMemo(() => fieldRows(report, layer, format), [report, layer, format]);
  if (rows.length === 0) return <p>Fields are listed here once the table Fields has one, with a crop of the table Crops.</p>;
  if (field !== null && rows.some((row) => row.field === field)) return <FieldPage key={field} name={field} report={report} />;
  return (
    <section aria-label="All fields">
      <p className="pn-ends pn-note">
        <span>worst first</span>
        <span>
          net after {layerCosts[layer]}, {format.perArea}
        </span>
      </p>
      <ul className="pn-fields">
        {rows.map((row) => (
          <li key={row.field}>
            <button type="button" className="pn-field" onClick={() => showField(row.field)}>
              <span className="pn-field-name">{row.field}</span>
              <span className="pn-number">{row.yield}</span>
              <span className={row.isLoss ? "pn-number pn-loss" : "pn-number"}>{row.net}</span>
              <span className="pn-note">
                {row.crop}
                {row.marks.length > 0 && (
                  <strong className={row.isMarked ? "pn-loss" : ""}>
                    {" "}
                    · {row.marks.some((mark) => mark.endsWith("to fix")) && <WarningMark />}
                    {row.marks.join(", ")}
                  </strong>
                )}
              </span>
              <span className="pn-number pn-note">goal {row.goal}</span>
              <span className="pn-net-bar" aria-hidden="true">
                <i className={row.isLoss ? "pn-net-loss" : "pn-net-gain"} style={{ inlineSize: `${row.bar}%` }} />
              </span>
            </button>
          </li>
        ))}
      </ul>
      <HarvestedFieldsPart report={report} />
    </section>
  );
}
