import { FluentProvider } from "@fluentui/react-components";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { paneThemes, useTheme } from "../pane/theme";
import { filledWorkbook } from "../host/embedded/package/filledWorkbook";
import { failed, ok } from "../result";
import { DropTarget } from "./DropTarget";
import { engineInWorker } from "./engineInWorker";
import { newBook, openBook } from "./embeddedBook";
import { detailsOf } from "./faultPage";
import type { Draft } from "./drafts";
import { newDraftId } from "./drafts";
import { DraftsOffered } from "./DraftsOffered";
import { picker, writeInPlace } from "./fileInPlace";
import { download, fetchWorkbook, pickInPlace, readFile, readInPlace, type DeskFile } from "./files";
import { Notice, type NoticeText } from "./Notice";
import type { AtHand, FileCommands, OpenBook } from "./openBook";
import { otherTabs, pageChannel } from "./otherTabs";
import { UnsavedDialog } from "./UnsavedDialog";
import { useTrial } from "./useTrial";
import { useDrafts } from "./useDrafts";
import { WorkbookView } from "./WorkbookView";

/** Where the demonstration workbooks lie, from the page's own address. */
const demo = "demo-season.xlsx";
const demoWithProblems = "demo-season-with-problems.xlsx";

/** One engine for all workbooks of the page; it starts with the first formula. */
const engine = engineInWorker();

/** The whole page: one workbook at a time, replaced only by one that could be opened. */
export function Desk({ atHand }: { readonly atHand: AtHand }) {
  const theme = useTheme(undefined);
  const [open, setOpen] = useState<OpenBook | null>(null);
  const [notice, setNotice] = useState<NoticeText | null>(null);
  const [asking, setAsking] = useState<{ readonly then: () => void } | null>(null);
  const [fault, setFault] = useState<unknown>(null);
  // A fault of ours in a promise is thrown where the page's fault boundary sees it.
  if (fault !== null) throw fault;

  const { news, left, keeper, discard, taken } = useDrafts(open);
  // Of the workbook at hand when it is needed; opening a file must stay the same command.
  const keeping = useRef(keeper);
  keeping.current = keeper;
  const tabs = useMemo(() => otherTabs(pageChannel(), newDraftId(), (text) => setNotice({ intent: "warning", text })), []);

  atHand.current = open;
  const hasChanges = useCallback(() => atHand.isTyping() || (atHand.current?.book.hasChanges() ?? false), [atHand]);
  const wouldLose = useCallback(() => hasChanges() || atHand.isFormTyped(), [atHand, hasChanges]);

  const { isWorthOpening, giveUp } = useTrial(setNotice);

  /**
   * Opens a file; answers whether it could be opened. The workbook at hand stays where it could not, and where it was changed while the
   * file was read, which nobody was asked about yet.
   */
  const show = useCallback(
    async (file: Promise<DeskFile>, from: "file" | "demo" | "made" | Draft = "file"): Promise<boolean> => {
      giveUp();
      const before = atHand.current?.book.version();
      const kept = atHand.current === null ? "" : ` ${atHand.current.name} is still open.`;
      /** The workbook stays after all, and whoever gave its changes up gave them up for another one. */
      const stays = (text: string | null): false => {
        if (text !== null) setNotice({ intent: "error", text: text + kept });
        if (hasChanges()) keeping.current?.changed();
        return false;
      };
      const got = await file.then(ok, (reason: unknown) => failed(reason instanceof Error ? reason.message : String(reason)));
      if (!got.ok) return stays(got.problems.join(" "));
      const { name, bytes, placed = null } = got.value;
      const isDraft = typeof from === "object";
      const trial = await isWorthOpening(name, bytes, kept);
      if (trial !== "open it") return stays(trial === "given up" ? null : `${name} could not be opened. ${trial.refused}`);
      const opened = openBook(bytes, { engine, isDraft: isDraft || from === "made" });
      if (!opened.ok) return stays(`${name} could not be opened. ${opened.problems.join(" ")}`);
      const put = () => {
        setOpen({ name, book: opened.value, placed: { current: placed }, draftId: isDraft ? from.id : newDraftId() });
        setNotice(null);
        tabs.opened(from === "demo" || from === "made" ? null : name);
        if (isDraft) taken(from.id);
      };
      const isChanged = atHand.current?.book.version() !== before || atHand.isTyping();
      if (atHand.current !== null && isChanged && wouldLose()) {
        keeping.current?.changed();
        setAsking({ then: put });
      } else put();
      return true;
    },
    [atHand, tabs, taken, wouldLose, hasChanges, isWorthOpening, giveUp],
  );

  const openNew = useCallback(() => {
    giveUp();
    setOpen({ name: "New season.xlsx", book: newBook({ engine }), placed: { current: null }, draftId: newDraftId() });
    tabs.opened(null);
  }, [tabs, giveUp]);

  useEffect(() => {
    show(fetchWorkbook(demo), "demo")
      .then((shown) => (shown ? undefined : openNew()))
      .catch(setFault);
  }, [show, openNew]);

  useEffect(() => {
    const guard = (event: BeforeUnloadEvent) => {
      if (wouldLose()) event.preventDefault();
    };
    window.addEventListener("beforeunload", guard);
    return () => window.removeEventListener("beforeunload", guard);
  }, [wouldLose]);

  useEffect(() => {
    const tell = (event: ErrorEvent | PromiseRejectionEvent) => {
      // Browsers report delayed resize notices this way, without an exception: nothing is wrong then.
      if (event instanceof ErrorEvent && !(event.error instanceof Error)) return;
      const { message } = event instanceof ErrorEvent ? event : { message: detailsOf(event.reason).split("\n")[0] ?? "" };
      setNotice({
        intent: "error",
        text: `Something went wrong in the page itself: ${message} The workbook is still here: save it, then load the page again.`,
      });
    };
    window.addEventListener("error", tell);
    window.addEventListener("unhandledrejection", tell);
    return () => {
      window.removeEventListener("error", tell);
      window.removeEventListener("unhandledrejection", tell);
    };
  }, []);

  /** Goes on at once where nothing would be lost, else asks first. */
  const replace = useCallback(
    (next: () => Promise<unknown>) => {
      const then = () => void next().catch(setFault);
      if (wouldLose()) setAsking({ then });
      else then();
    },
    [wouldLose],
  );

  /**
   * Saves the workbook at hand: into its file where the browser handed that over, else to the downloads; answers whether that
   * went well.
   */
  const save = useCallback(
    async (asCopy: boolean): Promise<boolean> => {
      const saving = atHand.current;
      if (saving === null) return false;
      const { name, book, placed } = saving;
      const again = () => setOpen((now) => (now?.book === book ? { ...saving } : now));
      const { bytes, keep } = await book.save();
      try {
        if (placed.current !== null && !asCopy) placed.current = await writeInPlace(placed.current, bytes);
        else download({ name, bytes });
      } catch (fault) {
        const why = fault instanceof Error ? fault.message : String(fault);
        setNotice({
          intent: "error",
          text: `${name} could not be saved: ${why}. What you entered is still only in this page and its draft.`,
          answers: asCopy || placed.current === null ? [] : [{ label: "Save a copy", choose: () => void save(true).catch(setFault) }],
        });
        return false;
      }
      keep();
      tabs.saved(name);
      // Drawn again, because the file is saved now.
      again();
      const notIn = atHand.isFormTyped() ? " What is typed in the pane and not added yet is in no table, and so not in the file." : "";
      if (placed.current !== null && !asCopy) {
        if (!book.hasChanges()) await keeper?.drop();
        setNotice({ intent: "success", text: `${name} was saved in its place.${notIn}` });
        return true;
      }
      void keeper?.handedOut();
      const missed = () => {
        book.notSaved();
        again();
        setNotice({
          intent: "warning",
          text:
            `${name} counts as unsaved again. Look whether the browser blocks downloads from this page, then save once more; its ` +
            "draft is kept.",
        });
      };
      setNotice({
        intent: "success",
        text: `${name} was handed to the browser's downloads.${notIn}`,
        answers: [{ label: "It did not arrive", choose: missed }],
      });
      return true;
    },
    [atHand, keeper, tabs],
  );

  const openAny = (file: Parameters<FileCommands["openFile"]>[0]) =>
    replace(() => show(file instanceof File ? readFile(file) : readInPlace(file)));
  const files: FileCommands = {
    openFile: openAny,
    pickFile:
      picker() === null
        ? null
        : () =>
            void pickInPlace()
              .then((handle) => (handle === null ? undefined : openAny(handle)))
              .catch(setFault),
    openDemo: () => replace(() => show(fetchWorkbook(demo), "demo")),
    openProblems: () => replace(() => show(fetchWorkbook(demoWithProblems), "demo")),
    openNew: () => replace(() => Promise.resolve(openNew())),
    openNext: ({ year, tables, notes }) =>
      replace(() => {
        const bytes = filledWorkbook(tables, [`Season ${year}`, ...notes]);
        return show(
          bytes.then((made) => ({ name: `Season ${year}.xlsx`, bytes: made })),
          "made",
        );
      }),
    save: () => void save(false).catch(setFault),
    saveCopy: () => void save(true).catch(setFault),
  };
  const openDraft = (draft: Draft) => replace(() => show(Promise.resolve({ name: draft.name, bytes: draft.bytes }), draft));

  return (
    <FluentProvider theme={paneThemes[theme]}>
      <div className="notice-region" aria-live="polite">
        {notice !== null && (
          <Notice
            {...notice}
            dismiss={() => {
              setNotice(null);
              document.querySelector<HTMLElement>(".sheet [data-active]")?.focus({ preventScroll: true });
            }}
          />
        )}
        {news.kept === "no" && hasChanges() && (
          <p className="no-draft">
            No draft is kept in this browser: {news.why}. Save the workbook often, because a crash would lose what no file has.
          </p>
        )}
        <DraftsOffered drafts={left} open={openDraft} discard={({ id }) => discard(id)} />
      </div>
      {open === null ? (
        <main className="starting">
          <h1>Pennyacre</h1>
          <p>Opening the demo season …</p>
        </main>
      ) : (
        <WorkbookView key={open.book.id} open={open} files={files} theme={theme} atHand={atHand} isDraftKept={news.kept === "yes"} />
      )}
      <DropTarget drop={files.openFile} />
      {asking !== null && (
        <UnsavedDialog
          name={open?.name ?? ""}
          hasChanges={hasChanges()}
          isFormTyped={atHand.isFormTyped()}
          stay={() => setAsking(null)}
          goOn={(saveFirst) => {
            setAsking(null);
            // What could not be saved is not given up; what nobody wants to save needs no draft any more.
            (saveFirst ? save(false) : Promise.resolve(keeper?.drop()).then(() => true))
              .then((done) => {
                if (done) asking.then();
              })
              .catch(setFault);
          }}
        />
      )}
    </FluentProvider>
  );
}
