import type { ComponentType } from "react";
import type { Subject } from "../workbook/problem";
import type { SeasonReport } from "../workbook/seasonReport";

export type PageProps = {
  readonly report: SeasonReport;
  /** Whose entries to fix are shown; `null`: all. Only the page of entries to fix asks. */
  readonly problemsOf: Subject | null;
};

/** `entries` has no tab: it opens from a line at the top, and from each figure that it makes incomplete. */
export type PageId = (typeof pageIds)[number];

const pageIds = ["season", "fields", "inputs", "changes", "lender", "more", "entries", "start", "help"] as const;

/** The page that an address asks for, such as `pane.html?page=inputs`; `undefined` where it asks for none that there is. */
export function pageAsked(search: string): PageId | undefined {
  const asked = new URLSearchParams(search).get("page");
  return pageIds.find((id) => id === asked);
}

export type Page = { readonly id: PageId; readonly title: string; readonly hasTab: boolean; readonly Content: ComponentType<PageProps> };
