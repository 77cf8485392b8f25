import type { ComponentType } from "react";
import type { Subject } from "../workbook/problem";
import type { SeasonReport } from "../workbook/seasonReport";

export type PageProps = {
  readonly report: SeasonReport;
  /** Whose problems to show; `null`: all. Only the page of problems asks. */
  readonly problemsOf: Subject | null;
};

export type PageId = "season" | "stand" | "change" | "lender" | "problems";

export type Page = {
  readonly id: PageId;
  readonly title: string;
  /** A number beside the title, with the words that a screen reader says for it; `null` where there is nothing to count. */
  readonly count: (report: SeasonReport) => number | null;
  readonly Content: ComponentType<PageProps>;
};
