import type { SeasonReport } from "../../workbook/seasonReport";
import { PickBox } from "../parts/PickBox";
import { usePane } from "../paneContext";
import { productWords, type Products } from "./products";

export type ProductRowsProps = {
  readonly products: Products;
  readonly report: SeasonReport;
  readonly draft: { readonly [box: string]: string };
  /** What is wrong with a box, where it is time to say so. */
  readonly fault: (box: string) => string | undefined;
  readonly change: (box: string, value: string) => void;
};

/** What goes into the tank: one product a row, its price from Items, and a blank row for the next. */
export function ProductRows({ products, report, draft, fault, change }: ProductRowsProps) {
  const { format } = usePane();
  const names = report.season.items.map(({ name }) => name);
  return (
    <fieldset className="pn-products">
      <legend>What goes in, a product a line, and its rate per {format.areaName}</legend>
      {products.rows.map((row) => {
        const { at, units, unit, asksPrice } = row;
        const box = (name: string, label: string) => {
          const said = fault(`${name}${at}`);
          return (
            <span>
              <input
                className="pn-input"
                aria-label={`${label} ${at}`}
                inputMode={name === "unit" ? undefined : "decimal"}
                autoComplete="off"
                placeholder={label.toLowerCase()}
                value={draft[`${name}${at}`] ?? ""}
                {...(said !== undefined && { "aria-invalid": true, "aria-describedby": `${name}${at}-fault` })}
                onChange={({ target }) => change(`${name}${at}`, target.value)}
              />
              {said !== undefined && (
                <span id={`${name}${at}-fault`} className="pn-box-fault">
                  {said}
                </span>
              )}
            </span>
          );
        };
        const says = productWords(row, format);
        return (
          <div key={at} className="pn-product">
            <PickBox
              label={`Product ${at}`}
              isLabelHidden
              value={draft[`item${at}`] ?? ""}
              choices={names}
              fault={fault(`item${at}`)}
              change={(value) => change(`item${at}`, value)}
            />
            {box("rate", "Rate")}
            {units.length === 0 ? (
              box("unit", "Unit")
            ) : (
              <span>
                <select
                  className="pn-select"
                  aria-label={`Unit ${at}`}
                  value={unit}
                  onChange={({ target }) => change(`unit${at}`, target.value)}
                  {...(fault(`unit${at}`) !== undefined && { "aria-invalid": true, "aria-describedby": `unit${at}-fault` })}
                >
                  {unit === "" && <option value="">unit</option>}
                  {units.map((each) => (
                    <option key={each}>{each}</option>
                  ))}
                </select>
                {fault(`unit${at}`) !== undefined && (
                  <span id={`unit${at}-fault`} className="pn-box-fault">
                    {fault(`unit${at}`)}
                  </span>
                )}
              </span>
            )}
            {asksPrice && (
              <div className="pn-product-price">
                <span className="pn-note">Items has no price for it.</span>
                {box("price", `Price per ${unit || "unit"}`)}
              </div>
            )}
            {says !== "" && <p className="pn-note pn-product-says">{says}</p>}
          </div>
        );
      })}
    </fieldset>
  );
}
