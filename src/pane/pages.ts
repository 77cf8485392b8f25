import { ChangesPage } from "./change/ChangesPage";
import { LenderPage } from "./lender/LenderPage";
import type { Page } from "./page";
import { ProblemsPage } from "./problems/ProblemsPage";
import { SeasonPage } from "./season/SeasonPage";
import { StandPage } from "./stand/StandPage";

const uncounted = () => null;

/** The pages of the pane, in the order of their tabs. */
export const pages: readonly Page[] = [
  { id: "season", title: "Season", count: uncounted, Content: SeasonPage },
  { id: "stand", title: "Stand", count: uncounted, Content: StandPage },
  { id: "change", title: "Weigh a change", count: (report) => report.figures.changes.length, Content: ChangesPage },
  { id: "lender", title: "Lender pages", count: uncounted, Content: LenderPage },
  { id: "problems", title: "Problems", count: (report) => report.problems.length, Content: ProblemsPage },
];
