import type { ComponentType } from "react";
import type { Subject } from "../workbook/problem";
import type { SeasonReport } from "../workbook/seasonReport";

export type PageProps = {
  readonly report: SeasonReport;
  /** Whose entries to fix are shown; `null`: all. Only the page of entries to fix asks. */
  readonly problemsOf: Subject | null;
};

/** `entries` has no tab: it opens from a line at the top, and from each figure that it makes incomplete. */
export type PageId = "season" | "fields" | "inputs" | "changes" | "lender" | "more" | "entries" | "start" | "help";

export type Page = { readonly id: PageId; readonly title: string; readonly hasTab: boolean; readonly Content: ComponentType<PageProps> };
