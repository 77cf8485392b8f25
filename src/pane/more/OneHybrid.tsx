import type { HybridComparison } from "../../core/hybrids/comparison";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Button } from "../parts/Button";
import { usePane } from "../paneContext";
import { useDecimalComma } from "../useDecimalComma";
import { hybridStart } from "./hybridStart";
import { netSays } from "./hybridsView";

type OneHybridProps = { readonly report: SeasonReport; readonly of: HybridComparison; readonly unit: string };

/** A hybrid trial by trial, each leading to its entries, and the change to it. */
export function OneHybrid({ report, of, unit }: OneHybridProps) {
  const { format, jump, compare } = usePane();
  const start = hybridStart(report, of, useDecimalComma());
  return (
    <>
      {netSays(of, format).map((words) => (
        <p key={words}>{words}</p>
      ))}
      <table className="pn-table">
        <caption>Trial by trial, {unit}</caption>
        <thead>
          <tr>
            <th scope="col">Trial</th>
            <th scope="col" className="pn-number">
              yield
            </th>
            <th scope="col" className="pn-number">
              check
            </th>
            <th scope="col" className="pn-number">
              difference
            </th>
          </tr>
        </thead>
        <tbody>
          {of.sides.map(({ trial, yield: yields, checkYield, entries }) => (
            <tr key={trial}>
              <th scope="row">
                <button type="button" className="pn-link" onClick={() => jump(entries[0]!)}>
                  {trial}
                </button>
              </th>
              <td className="pn-number">{format.yield(yields)}</td>
              <td className="pn-number">{format.yield(checkYield)}</td>
              <td className="pn-number">{checkYield === null ? "–" : format.yieldChange(checkYield, yields)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {start !== null && (
        <p>
          <Button onClick={() => compare(start)}>Compare {of.hybrid} as a change</Button>
          <span className="pn-note pn-line">
            {start.boxes["gain"] === ""
              ? "The yield gain starts blank: these trials show none that can be counted on."
              : "The yield gain begins with the mean of these trials."}
          </span>
        </p>
      )}
    </>
  );
}
