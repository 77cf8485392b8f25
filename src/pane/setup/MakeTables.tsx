import { useState } from "react";
import { Button } from "../parts/Button";
import type { InputTable } from "../../workbook/inputTable";
import { outcome } from "../failure";
import { failureNotice, usePane } from "../paneContext";

export type MakeTablesProps = { readonly tables: readonly InputTable[]; readonly label: string; readonly isMain?: boolean };

const firstToFill = (tables: readonly InputTable[]): InputTable => tables.find(({ name }) => name === "Crops") ?? tables[0]!;

const madeWords = (tables: readonly InputTable[]): string =>
  tables.length === 1
    ? `The table ${tables[0]!.sheet} was made, on a sheet of its own. Each cell says what it is for as you select it.`
    : `${tables.length} tables were made, each on a sheet of its own. Begin with ` +
      `${tables.some(({ name }) => name === "Crops") ? "Crops and Fields" : tables[0]!.sheet}: each cell says what it is for as you ` +
      "select it.";

/** A button that makes input tables, each on a sheet of its own. */
export function MakeTables({ tables, label, isMain = false }: MakeTablesProps) {
  const { host, watch, tell, fault } = usePane();
  const [isMaking, setMaking] = useState(false);
  const make = async () => {
    setMaking(true);
    const made = await outcome(() => host.makeTables(tables));
    if (made.ok) {
      tell({ tone: "done", text: madeWords(tables) });
      await watch.refresh();
      const place = watch.state().reading?.report.placeOf({ table: firstToFill(tables).name }) ?? null;
      // Shown for convenience: that it cannot be shown is nothing to be told of beside what was made.
      if (place !== null) await outcome(() => host.select(place));
    } else tell(failureNotice(made.failure, () => void make().catch(fault)));
    setMaking(false);
  };
  return (
    <Button
      appearance={isMain ? "primary" : "secondary"}
      disabledFocusable={isMaking}
      onClick={() => {
        if (!isMaking) void make().catch(fault);
      }}
    >
      {isMaking ? "Making …" : label}
    </Button>
  );
}
