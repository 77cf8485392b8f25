import { useMemo } from "react";
import type { PageProps } from "../page";
import { usePane } from "../paneContext";
import { PurchasePart } from "../purchase/PurchasePart";
import { entryTeller } from "../parts/entryView";
import { ItemsCard } from "../season/ItemsCard";

/** What was bought and what is still to buy. */
export function InputsPage({ report }: PageProps) {
  const { format, layer } = usePane();
  const teller = useMemo(() => entryTeller(report, format), [report, format]);
  return (
    <>
      <PurchasePart report={report} layer={layer} />
      <ItemsCard report={report} teller={teller} />
    </>
  );
}
