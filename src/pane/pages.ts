import { lazy, type ComponentType } from "react";
import type { Page, PageProps } from "./page";
import { SeasonPage } from "./season/SeasonPage";

/** A page whose code comes after the first one is on screen, so that the pane opens over a farm's line. */
const later = (load: () => Promise<ComponentType<PageProps>>) => lazy(() => load().then((Content) => ({ default: Content })));
const fields = () => import("./fields/FieldsPage").then(({ FieldsPage }) => FieldsPage);
const inputs = () => import("./inputs/InputsPage").then(({ InputsPage }) => InputsPage);
const entries = () => import("./problems/EntriesPage").then(({ EntriesPage }) => EntriesPage);
const changes = () => import("./change/ChangesPage").then(({ ChangesPage }) => ChangesPage);
const lender = () => import("./lender/LenderPage").then(({ LenderPage }) => LenderPage);
const start = () => import("./start/StartPage").then(({ StartPage }) => StartPage);
const help = () => import("./help/HelpPage").then(({ HelpPage }) => HelpPage);
const more = () => import("./more/MorePage").then(({ MorePage }) => MorePage);

/** Fetches the pages that come later. One that does not arrive is asked for again when it is opened. */
export const fetchLaterPages = (): void => {
  for (const load of [inputs, entries, fields, changes, lender, more, start, help]) load().catch(() => undefined);
};

/** The pages of the pane, in the order of their tabs. */
export const pages: readonly Page[] = [
  { id: "season", title: "Season", hasTab: true, Content: SeasonPage },
  { id: "fields", title: "Fields", hasTab: true, Content: later(fields) },
  { id: "inputs", title: "Inputs", hasTab: true, Content: later(inputs) },
  { id: "changes", title: "Changes", hasTab: true, Content: later(changes) },
  { id: "lender", title: "Lender", hasTab: true, Content: later(lender) },
  { id: "more", title: "More", hasTab: true, Content: later(more) },
  { id: "start", title: "Start a rough budget", hasTab: false, Content: later(start) },
  { id: "help", title: "Help", hasTab: false, Content: later(help) },
  { id: "entries", title: "Entries to fix", hasTab: false, Content: later(entries) },
];
