import { FluentProvider } from "@fluentui/react-components";
import { useCallback, useEffect, useMemo, useRef, useState, useSyncExternalStore } from "react";
import { Button } from "./parts/Button";
import { planningCaution } from "../core/cautions";
import type { Layer } from "../core/kinds";
import type { EntryRef } from "../core/row";
import type { WorkbookHost } from "../host/workbookHost";
import type { Place, Subject } from "../workbook/problem";
import { ReadingMemory } from "../core/readingMemory";
import { seasonReport } from "../workbook/report";
import type { SeasonReport } from "../workbook/seasonReport";
import { failureWords, outcome } from "./failure";
import { FaultBoundary } from "./FaultBoundary";
import { formatOf } from "./format";
import { HostLine } from "./HostLine";
import { keptNowhere, type KeptTyping } from "./kept";
import { NoticeBar } from "./NoticeBar";
import { failureNotice, PaneContext, type Notice, type OpenDemo, type OpenNext, type PaneTools } from "./paneContext";
import type { PageId } from "./page";
import { Pages } from "./PagesFrame";
import { Coin } from "./parts/Coin";
import "./pane.css";
import { watchSeason, type WatchState } from "./seasonWatch";
import { paneThemes, useTheme, type PaneTheme } from "./theme";
import { version } from "./version";
import { Waiting } from "./Waiting";

export type PaneProps = {
  /** The open workbook. A pane stays with one host: give another one a `key` of its own. */
  readonly host: WorkbookHost;
  /** Opens the demo workbook; left out where the host has none to open. */
  readonly openDemo?: OpenDemo;
  readonly openNext?: OpenNext;
  /** Called with each reading of the workbook. It must stay the same function. */
  readonly onReport?: (report: SeasonReport) => void;
  /** Left out: light or dark as the system prefers. */
  readonly theme?: PaneTheme;
  /** The page that is shown first; left out: Season. */
  readonly opening?: PageId;
  /** Where half-typed text is kept while the window lives; left out: with the page. */
  readonly kept?: KeptTyping;
  /** Language and region whose way of writing numbers is used; left out: the browser's. */
  readonly language?: string;
};

/** The task pane: the same in Excel and beside the embedded workbook. */
export function Pane(props: PaneProps) {
  const theme = useTheme(props.theme);
  return (
    <FluentProvider theme={paneThemes[theme]} className="pn-pane" data-theme={theme}>
      <FaultBoundary>
        <LivePane {...props} />
      </FaultBoundary>
    </FluentProvider>
  );
}

/** Follows the workbook, and hands what was read to the pages. */
function LivePane({ host, openDemo, openNext, onReport, language, opening = "season", kept = keptNowhere }: PaneProps) {
  const watch = useMemo(() => {
    const kept = new ReadingMemory();
    return watchSeason(host, (content) => seasonReport(content, true, kept));
  }, [host]);
  const state = useSyncExternalStore(watch.subscribe, watch.state);
  useEffect(() => watch.start(), [watch]);
  useEffect(() => {
    // A change may have been missed while the pane was out of sight.
    const onReturn = () => {
      if (document.visibilityState === "visible") watch.returned();
    };
    window.addEventListener("focus", onReturn);
    document.addEventListener("visibilitychange", onReturn);
    return () => {
      window.removeEventListener("focus", onReturn);
      document.removeEventListener("visibilitychange", onReturn);
    };
  }, [watch]);

  const report = state.reading?.report;
  useEffect(() => {
    if (report !== undefined) onReport?.(report);
  }, [report, onReport]);

  const [fault, setFault] = useState<{ readonly error: unknown } | null>(null);
  if (fault !== null) throw fault.error;
  if (state.fault !== undefined) throw state.fault;

  const [notice, setNotice] = useState<Notice | null>(null);
  const [page, setPage] = useState<PageId>(opening);
  const [layer, setLayer] = useState<Layer>("cash");
  const [field, setField] = useState<string | null>(null);
  const [changeStart, setChangeStart] = useState<PaneTools["changeStart"]>(null);
  const [problemsOf, setProblemsOf] = useState<Subject | null>(null);
  const focusPage = useRef(false);
  const settings = state.reading?.report.season.settings;
  const format = useMemo(() => formatOf(settings ?? { currency: "USD", areaUnit: "ac" }, language), [settings, language]);

  const jump = useCallback(
    (place: Place | EntryRef) => {
      const cell = watch.state().reading?.report.placeOf(place) ?? null;
      if (cell === null) {
        setNotice({ tone: "failed", text: `The workbook has no cell to show for ${place.table}. Make the table first, under Tables.` });
        return;
      }
      outcome(() => host.select(cell)).then(
        (done) => setNotice(done.ok ? null : failureNotice(done.failure, () => jump(place))),
        (error: unknown) => setFault({ error }),
      );
    },
    [host, watch],
  );

  const tools = useMemo((): PaneTools => {
    const open = (next: PageId, of?: string) => {
      if (of !== undefined) setField(of);
      focusPage.current = true;
      setPage(next);
    };
    return {
      host,
      watch,
      format,
      jump,
      layer,
      chooseLayer: setLayer,
      open,
      compare: (start) => {
        open("changes");
        setChangeStart((before) => ({ ...start, time: (before?.time ?? 0) + 1 }));
      },
      changeStart,
      field,
      showField: setField,
      tell: setNotice,
      kept,
      fault: (error) => setFault({ error }),
      showProblems: (of) => {
        setProblemsOf(of);
        open("entries");
      },
      ...(openDemo && { openDemo }),
      ...(openNext && { openNext }),
    };
  }, [host, watch, format, jump, openDemo, openNext, layer, field, changeStart, kept]);

  return (
    <PaneContext value={tools}>
      <NoticeBar notice={notice} dismiss={() => setNotice(null)} />
      <HostLine host={host} refresh={() => void watch.refresh()} fault={(error) => setFault({ error })} />
      <ReadingFailed state={state} again={() => void watch.refresh()} />
      {state.reading === null ? (
        <Waiting isOver={state.failure !== null} />
      ) : (
        <Pages
          report={state.reading.report}
          page={page}
          problemsOf={problemsOf}
          focusPage={focusPage}
          open={(next) => {
            setPage(next);
            setProblemsOf(null);
            // What was done is read by now; it would cover the head of the next page.
            setNotice((told) => (told?.tone === "done" ? null : told));
          }}
        />
      )}
      <footer className="pn-foot">
        <p>{planningCaution}</p>
        <p className="pn-buttons">
          <Button size="small" disabledFocusable={state.isReading} onClick={() => void watch.refresh()}>
            Read the workbook again
          </Button>
          <span className="pn-note pn-made-by">
            <Coin size={14} />
            Pennyacre {version}
          </span>
        </p>
        {state.deaf !== null && <p>Changes are not noticed by themselves here. {state.deaf.what}</p>}
      </footer>
    </PaneContext>
  );
}

function ReadingFailed({ state: { failure, reading }, again }: { readonly state: WatchState; readonly again: () => void }) {
  if (failure === null) return null;
  return (
    <div className="pn-notice pn-notice-failed" role="alert">
      <p>
        <strong>The workbook could not be read.</strong> {failureWords(failure)}
        {reading !== null && " The figures below are from the reading before."}
      </p>
      <Button appearance="primary" onClick={again}>
        Try again
      </Button>
    </div>
  );
}
