import { Fragment, lazy, Suspense, useEffect, useId, useRef, useState } from "react";
import { placeWords } from "../workbook/placeWords";
import type { Subject } from "../workbook/problem";
import type { SeasonReport } from "../workbook/seasonReport";
import { OnItsWay } from "./OnItsWay";
import { usePane } from "./paneContext";
import type { PageId } from "./page";
import { fetchLaterPages, pages } from "./pages";
import { EntriesLine } from "./problems/EntriesLine";
import { Tabs } from "./Tabs";

/** What a season with tables never shows comes when it is wanted. */
const EmptyPage = lazy(() => import("./setup/EmptyPage").then((module) => ({ default: module.EmptyPage })));

export type PagesProps = {
  readonly report: SeasonReport;
  readonly page: PageId;
  readonly problemsOf: Subject | null;
  /** Whether the page that is opened next takes the focus; put back to false when it has. */
  readonly focusPage: { current: boolean };
  readonly open: (page: PageId) => void;
};

const EffectLine = lazy(() => import("./moved/EffectLine").then((part) => ({ default: part.EffectLine })));

/** Says which rows are being entered, because what stands in them is in no figure yet. */
function RowsBeingEntered({ report }: { readonly report: SeasonReport }) {
  const { jump } = usePane();
  const open = report.problems.filter(({ code }) => code === "row-open");
  if (open.length === 0) return null;
  return (
    <p className="pn-note" role="status">
      {open.length === 1
        ? "One entry is being typed and not counted yet: "
        : `${open.length} entries are being typed and not counted yet: `}
      {open.map(({ at }, index) => (
        <Fragment key={at.table}>
          {index > 0 && "; "}
          <button type="button" className="pn-link" onClick={() => jump(at)}>
            {placeWords(at)}
          </button>
        </Fragment>
      ))}
      .
    </p>
  );
}

/** The tabs and the page that is open. A page once opened stays, unseen, so that nothing typed in it is lost. */
export function Pages({ report, page, problemsOf, focusPage, open }: PagesProps) {
  const id = useId();
  const [opened, setOpened] = useState<ReadonlySet<PageId>>(new Set([page]));
  if (!opened.has(page)) setOpened(new Set([...opened, page]));
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (!focusPage.current) return;
    focusPage.current = false;
    heading.current?.focus();
  });
  useEffect(fetchLaterPages, []);
  const { seasonYear, currency, farm } = report.season.settings;
  if (report.tablesFound.size === 0)
    return (
      <Suspense fallback={<OnItsWay />}>
        <EmptyPage report={report} page={page} />
      </Suspense>
    );
  return (
    <>
      <header className="pn-head">
        <h1>{farm ?? (seasonYear === null ? "Season" : `Season ${seasonYear}`)}</h1>
        <span className="pn-note">
          {farm !== null && seasonYear !== null
            ? `Season ${seasonYear}`
            : `${currency}, ${report.season.settings.areaUnit === "ac" ? "acres" : "hectares"}`}
        </span>
      </header>
      <RowsBeingEntered report={report} />
      <Tabs
        label="Pages"
        chosen={page}
        choose={open}
        elementId={(each) => `${id}-tab-${each}`}
        tabs={pages
          .filter(({ hasTab }) => hasTab)
          .map((each) => ({ id: each.id, title: each.title, controls: opened.has(each.id) ? `${id}-${each.id}` : null }))}
      />
      {page !== "entries" && <EntriesLine report={report} />}
      <Suspense>
        <EffectLine report={report} />
      </Suspense>
      {pages
        .filter((each) => opened.has(each.id))
        .map(({ id: each, title, hasTab, Content }) => (
          <div
            key={each}
            id={`${id}-${each}`}
            className="pn-body"
            role={hasTab ? "tabpanel" : "region"}
            aria-labelledby={hasTab ? `${id}-tab-${each}` : `${id}-title-${each}`}
            hidden={each !== page}
          >
            <h2 id={`${id}-title-${each}`} tabIndex={-1} {...(each === page && { ref: heading })} className={hasTab ? "pn-page-title" : ""}>
              {title}
            </h2>
            <Suspense fallback={<OnItsWay />}>
              <Content report={report} problemsOf={problemsOf} />
            </Suspense>
          </div>
        ))}
    </>
  );
}
