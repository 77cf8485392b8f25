import { readTableAs } from "../commands/readTableAs";
import { takeRowsIn } from "../commands/takeRowsIn";
import type { Outcome } from "../failure";
import { usePane } from "../paneContext";
import { RemedyButton } from "./RemedyButton";

const said = <Value,>(done: Outcome<Value>, words: (value: Value) => string): Outcome<string> =>
  done.ok ? { ok: true, value: words(done.value) } : done;

/** Takes the entries below a table into it, as one step to undo. */
export function TakeRowsIn({ table, label }: { readonly table: string; readonly label: string }) {
  const { host, format } = usePane();
  const words = (count: number) => `${format.count(count)} ${count === 1 ? "entry is" : "entries are"} now part of ${table}.`;
  return <RemedyButton label={label} of={table} mend={async () => said(await takeRowsIn(host, table), words)} />;
}

/** Reads a table that is almost named as ours as ours. */
export function ReadTableAs({ table, own }: { readonly table: string; readonly own: string }) {
  const { host } = usePane();
  const words = () => `${table} is now read from your table ${own}. The match is kept in the table Matches.`;
  return <RemedyButton label={`Read it as ${table}`} of={own} mend={async () => said(await readTableAs(host, table, own), words)} />;
}
