import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { InputTable } from "../../workbook/inputTable";
import { outcome } from "../failure";
import { failureNotice, usePane } from "../paneContext";

export type MakeTablesProps = { readonly tables: readonly InputTable[]; readonly label: string; readonly isMain?: boolean };

/** A button that makes input tables, each on a sheet of its own. */
export function MakeTables({ tables, label, isMain = false }: MakeTablesProps) {
  const { host, watch, tell, fault } = usePane();
  const [isMaking, setMaking] = useState(false);
  const make = async () => {
    setMaking(true);
    const made = await outcome(() => host.makeTables(tables));
    if (made.ok) {
      tell({ tone: "done", text: `${tables.length === 1 ? "The table was made" : `${tables.length} tables were made`}, each on a sheet of its own. Replace the example rows by your own, Crops and Fields first.` });
      await watch.refresh();
    } else tell(failureNotice(made.failure, () => void make().catch(fault)));
    setMaking(false);
  };
  return (
    <Button appearance={isMain ? "primary" : "secondary"} disabledFocusable={isMaking} onClick={() => { if (!isMaking) void make().catch(fault); }}>
      {isMaking ? "Making …" : label}
    </Button>
  );
}
