import { FluentProvider } from "@fluentui/react-components";
import { useCallback, useEffect, useState } from "react";
import { paneThemes, useTheme } from "../pane/theme";
import { failed, ok } from "../result";
import { DropTarget } from "./DropTarget";
import { engineInWorker } from "./engineInWorker";
import { newBook, openBook } from "./embeddedBook";
import { detailsOf } from "./faultPage";
import { download, fetchWorkbook, readFile, type WorkbookFile } from "./files";
import { Notice, type NoticeText } from "./Notice";
import type { AtHand, FileCommands, OpenBook } from "./openBook";
import { UnsavedDialog } from "./UnsavedDialog";
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

  atHand.current = open;
  const hasChanges = useCallback(() => atHand.isTyping() || (atHand.current?.book.hasChanges() ?? false), [atHand]);

  /** Opens a file; answers whether it could be opened. The workbook at hand stays where it could not. */
  const show = useCallback(async (file: Promise<WorkbookFile>): Promise<boolean> => {
    const kept = atHand.current === null ? "" : ` ${atHand.current.name} is still open.`;
    const got = await file.then(ok, (reason: unknown) => failed(reason instanceof Error ? reason.message : String(reason)));
    if (!got.ok) {
      setNotice({ intent: "error", text: got.problems.join(" ") + kept });
      return false;
    }
    const { name, bytes } = got.value;
    const opened = openBook(bytes, { engine });
    if (!opened.ok) {
      setNotice({ intent: "error", text: `${name} could not be opened. ${opened.problems.join(" ")}${kept}` });
      return false;
    }
    setOpen({ name, book: opened.value });
    setNotice(null);
    return true;
  }, [atHand]);

  const openNew = useCallback(() => setOpen({ name: "New season.xlsx", book: newBook({ engine }) }), []);

  useEffect(() => {
    show(fetchWorkbook(demo)).then((shown) => (shown ? undefined : openNew())).catch(setFault);
  }, [show, openNew]);

  useEffect(() => {
    const guard = (event: BeforeUnloadEvent) => {
      if (hasChanges()) event.preventDefault();
    };
    window.addEventListener("beforeunload", guard);
    return () => window.removeEventListener("beforeunload", guard);
  }, [hasChanges]);

  useEffect(() => {
    const tell = (event: ErrorEvent | PromiseRejectionEvent) => {
      // Browsers report delayed resize notices this way, without an exception: nothing is wrong then.
      if (event instanceof ErrorEvent && !(event.error instanceof Error)) return;
      const { message } = event instanceof ErrorEvent ? event : { message: detailsOf(event.reason).split("\n")[0] ?? "" };
      setNotice({ intent: "error", text: `Something went wrong in the page itself: ${message} The workbook is still here: save it, then load the page again.` });
    };
    window.addEventListener("error", tell);
    window.addEventListener("unhandledrejection", tell);
    return () => {
      window.removeEventListener("error", tell);
      window.removeEventListener("unhandledrejection", tell);
    };
  }, []);

  /** Goes on at once where nothing would be lost, else asks first. */
  const replace = useCallback((next: () => Promise<unknown>) => {
    const then = () => void next().catch(setFault);
    if (hasChanges()) setAsking({ then });
    else then();
  }, [hasChanges]);

  const save = useCallback(async () => {
    const saving = atHand.current;
    if (saving === null) return;
    download({ name: saving.name, bytes: await saving.book.save() });
    // Drawn again, because the file is saved now.
    setOpen((now) => (now?.book === saving.book ? { ...saving } : now));
    setNotice({ intent: "success", text: `${saving.name} was handed to the browser's downloads.` });
  }, [atHand]);

  const files: FileCommands = {
    openFile: (file) => replace(() => show(readFile(file))),
    openDemo: () => replace(() => show(fetchWorkbook(demo))),
    openProblems: () => replace(() => show(fetchWorkbook(demoWithProblems))),
    openNew: () => replace(() => Promise.resolve(openNew())),
    save: () => void save().catch(setFault),
  };

  return (
    <FluentProvider theme={paneThemes[theme]}>
      <div className="notice-region" aria-live="polite">
        {notice !== null && <Notice {...notice} dismiss={() => setNotice(null)} />}
      </div>
      {open === null
        ? <main className="starting"><h1>Pennyacre</h1><p>Opening the demo season …</p></main>
        : <WorkbookView key={open.book.id} open={open} files={files} theme={theme} atHand={atHand} />}
      <DropTarget drop={files.openFile} />
      {asking !== null && (
        <UnsavedDialog
          name={open?.name ?? ""} stay={() => setAsking(null)}
          goOn={(saveFirst) => {
            setAsking(null);
            (saveFirst ? save() : Promise.resolve()).then(asking.then).catch(setFault);
          }}
        />
      )}
    </FluentProvider>
  );
}
