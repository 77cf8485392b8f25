import { lazy, type ComponentType } from "react";
import type { Page, PageProps } from "./page";
import { ProblemsPage } from "./problems/ProblemsPage";
import { SeasonPage } from "./season/SeasonPage";

const uncounted = () => null;

/** A page whose code comes after the first one is on screen, so that the pane opens over a farm's line. */
const later = (load: () => Promise<ComponentType<PageProps>>) => lazy(() => load().then((Content) => ({ default: Content })));
const stand = () => import("./stand/StandPage").then(({ StandPage }) => StandPage);
const changes = () => import("./change/ChangesPage").then(({ ChangesPage }) => ChangesPage);
const lender = () => import("./lender/LenderPage").then(({ LenderPage }) => LenderPage);

/** Fetches the pages that come later. One that does not arrive is asked for again when it is opened. */
export const fetchLaterPages = (): void => {
  for (const load of [stand, changes, lender]) load().catch(() => undefined);
};

/** The pages of the pane, in the order of their tabs. */
export const pages: readonly Page[] = [
  { id: "season", title: "Season", count: uncounted, Content: SeasonPage },
  { id: "stand", title: "Stand", count: uncounted, Content: later(stand) },
  { id: "change", title: "Weigh a change", count: (report) => report.figures.changes.length, Content: later(changes) },
  { id: "lender", title: "Lender pages", count: uncounted, Content: later(lender) },
  { id: "problems", title: "Problems", count: (report) => report.problems.length, Content: ProblemsPage },
];
