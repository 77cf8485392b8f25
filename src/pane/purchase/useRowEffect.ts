import { useEffect, useState } from "react";
import type { Layer } from "../../core/kinds";
import { seasonReport } from "../../workbook/report";
import type { SeasonReport } from "../../workbook/seasonReport";
import type { EntryRow } from "../commands/entryRow";
import { usePane } from "../paneContext";
import { rowEffect } from "./rowEffect";
import { purchaseCells, withPurchase } from "./withPurchase";

/** Milliseconds without a key before the season is worked out with the row, so that typing never waits for it. */
const pause = 200;

/** What the row would do, in words; empty while there is none or it is being worked out. */
export function useRowEffect(report: SeasonReport, layer: Layer, row: EntryRow | null): string {
  const { watch, format, fault } = usePane();
  const [said, say] = useState<{ readonly key: string; readonly words: string }>({ key: "", words: "" });
  // The row is another object whenever a key is pressed anywhere in the form: what is in it tells it.
  const key = row === null ? "" : JSON.stringify(purchaseCells(row));
  useEffect(() => {
    if (key === "") return undefined;
    const timer = setTimeout(() => {
      const content = watch.state().reading?.content;
      try {
        const next = content === undefined ? null : withPurchase(content, JSON.parse(key) as ReturnType<typeof purchaseCells>);
        say({ key, words: next === null ? "" : rowEffect(report, seasonReport(next, true), layer, format) });
      } catch (error) {
        fault(error);
      }
    }, pause);
    return () => clearTimeout(timer);
  }, [key, report, layer, watch, format, fault]);
  return said.key === key ? said.words : "";
}
