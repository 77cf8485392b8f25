import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { takeRowsIn } from "../commands/takeRowsIn";
import { failureNotice, usePane } from "../paneContext";

/** Takes the entries below a table into it, as one step to undo. */
export function TakeRowsIn({ table, label }: { readonly table: string; readonly label: string }) {
  const { host, watch, tell, fault, format } = usePane();
  const [isBusy, setBusy] = useState(false);
  const take = async () => {
    if (isBusy) return;
    setBusy(true);
    const taken = await takeRowsIn(host, table).finally(() => setBusy(false));
    if (!taken.ok) return tell(failureNotice(taken.failure, () => void take().catch(fault)));
    tell({ tone: "done", text: `${format.count(taken.value)} ${taken.value === 1 ? "entry is" : "entries are"} now part of ${table}.` });
    await watch.refresh();
  };
  return <Button size="small" disabledFocusable={isBusy} aria-label={`${label}: ${table}`} onClick={() => void take().catch(fault)}>{label}</Button>;
}
