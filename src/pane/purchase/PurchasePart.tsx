import { PurchaseForm, type PurchaseFormProps } from "./PurchaseForm";

/** The place of the form on the page of the season; nothing where no item can be bought yet. */
export function PurchasePart({ report, layer }: PurchaseFormProps) {
  if (report.season.items.length === 0) return null;
  return (
    <section className="pn-card pn-purchase" aria-labelledby="pn-what-bought">
      <header><h3 id="pn-what-bought">What did you buy?</h3></header>
      <PurchaseForm report={report} layer={layer} />
    </section>
  );
}
