import type { ComponentType } from "react";
import type { Subject } from "../workbook/problem";
import type { SeasonReport } from "../workbook/seasonReport";
import { ChangesPage } from "./change/ChangesPage";
import { LenderPage } from "./lender/LenderPage";
import { ProblemsPage } from "./problems/ProblemsPage";
import { SeasonPage } from "./season/SeasonPage";
import { StandPage } from "./stand/StandPage";

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

const uncounted = () => null;

/** The pages of the pane, in the order of their tabs. */
export const pages: readonly Page[] = [
  { id: "season", title: "Season", count: uncounted, Content: SeasonPage },
  { id: "stand", title: "Stand", count: uncounted, Content: StandPage },
  { id: "change", title: "Weigh a change", count: (report) => report.figures.changes.length, Content: ChangesPage },
  { id: "lender", title: "Lender pages", count: uncounted, Content: LenderPage },
  { id: "problems", title: "Problems", count: (report) => report.problems.length, Content: ProblemsPage },
];
