import { PurchaseForm, type PurchaseFormProps } from "./PurchaseForm";

/** The place of the form on the page of the season. */
export function PurchasePart({ report, layer }: PurchaseFormProps) {
  return (
    <section className="pn-card pn-purchase" aria-labelledby="pn-what-bought">
      <header>
        <h3 id="pn-what-bought">What did you buy?</h3>
      </header>
      <PurchaseForm report={report} layer={layer} />
    </section>
  );
}
