/** The pane over a workbook in memory, as a page for the browser to test. What it shows is chosen by the address. */
import { createRoot } from "react-dom/client";
import { HostError } from "../../src/host/workbookHost";
import { Pane } from "../../src/pane/Pane";
import type { PaneTheme } from "../../src/pane/theme";
import type { RawTable, WorkbookContent } from "../../src/workbook/cell";
import { memoryHost, type MemoryHost } from "../support/memoryHost";
import { countedContent, faultyContent, paneContent } from "../support/paneWorkbook";

export type PanePage = {
  readonly host: MemoryHost;
  /** Makes the next call of a method fail. */
  readonly refuse: (method: keyof MemoryHost["refusals"], reason: HostError["reason"], message: string) => void;
  demoOpened: number;
};

const asked = new URLSearchParams(location.search);
const bills = paneContent.tables.filter(({ name }) => name === "Items" || name === "Purchases");
/** The same with the column Counted in struck out of the table Changes. */
const withoutCountedIn = countedContent.tables.map((table) => {
  const countedIn = table.headers.indexOf("Counted in");
  return table.name !== "Changes"
    ? table
    : {
        ...table,
        headers: table.headers.filter((_, index) => index !== countedIn),
        rows: table.rows.map((row) => row.filter((_, index) => index !== countedIn)),
      };
});
const contents = {
  "without-counted-in": { ...countedContent, tables: withoutCountedIn },
  bills: { ...paneContent, tables: bills },
  season: paneContent,
  problems: faultyContent,
  counted: countedContent,
  empty: { ...paneContent, tables: [] },
};
/** A workbook that the test has read and handed over, as its ranges go through JSON. */
const shared = (
  window as { readonly sharedContent?: Omit<WorkbookContent, "ranges"> & { readonly ranges: readonly (readonly [string, RawTable])[] } }
).sharedContent;
/** The shared one, its money in the currency that is asked for. */
const inCurrency = ({ tables, ...rest }: Omit<WorkbookContent, "ranges">) => {
  const currency = asked.get("currency");
  return {
    ...rest,
    tables:
      currency === null
        ? tables
        : tables.map((table) => ({ ...table, rows: table.rows.map((row) => row.map((value) => (value === "USD" ? currency : value))) })),
  };
};
const content: WorkbookContent =
  shared !== undefined
    ? { ...inCurrency(shared), ranges: new Map(shared.ranges) }
    : contents[(asked.get("workbook") ?? "season") as keyof typeof contents];
const host = memoryHost(content, { address: "My fields!A2:D30", headings: ["Name", "Crop", "Size", "Goal"] });
const page: PanePage = {
  host,
  demoOpened: 0,
  refuse: (method, reason, message) => void host.refusals[method].push(new HostError(reason, message)),
};
Object.assign(window, { panePage: page });
if (asked.has("busy")) page.refuse("read", "busy", "The workbook has not answered for 20 seconds.");
if (asked.has("slow")) host.read = () => new Promise(() => undefined);
if (asked.has("fault")) host.read = () => Promise.resolve(undefined as never);
const theme = asked.get("theme") as PaneTheme | null;

createRoot(document.getElementById("pane")!).render(
  <Pane
    host={host}
    language="en-US"
    {...(theme !== null && { theme })}
    {...(asked.has("demo") && {
      openDemo: () => {
        page.demoOpened += 1;
        return asked.get("demo") === "refused"
          ? Promise.reject(new HostError("failed", "The demo season did not arrive."))
          : Promise.resolve("The demo season opens as a workbook of its own.");
      },
    })}
  />,
);
