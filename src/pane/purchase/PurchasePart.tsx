import { Disclosure } from "../parts/Disclosure";
import { PurchaseForm, type PurchaseFormProps } from "./PurchaseForm";

/** The place of the form on the page of the season; nothing where no item can be bought yet. */
export function PurchasePart({ report, layer }: PurchaseFormProps) {
  if (report.season.items.length === 0) return null;
  return (
    <section className="pn-card pn-purchase" aria-label="Add a purchase">
      <Disclosure look="section" label="Add a purchase" keeps><PurchaseForm report={report} layer={layer} /></Disclosure>
    </section>
  );
}
