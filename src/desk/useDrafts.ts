/** The draft of the open workbook, and those that were left by pages before. */
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { DraftKeeper, type DraftNews } from "./draftKeeper";
import { browserDrafts, holdDraft, leftDrafts, type Draft } from "./drafts";
import { laterInPage } from "./later";
import type { OpenBook } from "./openBook";

/** A file that nobody missed for a day after it went to the downloads has arrived there. */
const dayInMilliseconds = 86_400_000;

export function useDrafts(open: OpenBook | null) {
  const [news, setNews] = useState<DraftNews>({ kept: "none" });
  const [left, setLeft] = useState<readonly Draft[]>([]);
  /** The draft of the workbook that is open. */
  const held = useRef<string | null>(null);

  useEffect(() => {
    let isGone = false;
    leftDrafts(browserDrafts)
      .then(async (drafts) => {
        const arrived = drafts.filter(({ isHandedOut, at }) => isHandedOut && at < Date.now() - dayInMilliseconds);
        if (!isGone) setLeft(drafts.filter((draft) => !arrived.includes(draft)));
        for (const { id } of arrived) await browserDrafts.remove(id);
      })
      .catch((fault: unknown) => setNews({ kept: "no", why: fault instanceof Error ? fault.message : String(fault) }));
    return () => {
      isGone = true;
    };
  }, []);

  const keeper = useMemo(() => {
    if (open === null) return null;
    const { name, draftId: id, book } = open;
    // What is told of a workbook that is no longer open is not said of the one that is.
    const tell = (told: DraftNews) => {
      if (held.current === id) setNews(told);
    };
    return new DraftKeeper(browserDrafts, { id, name, bytes: () => book.draft() }, laterInPage, tell);
    // The same workbook keeps its draft, whatever is noted of its file.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [open?.book, open?.draftId]);

  useEffect(() => {
    if (open === null || keeper === null) return undefined;
    held.current = open.draftId;
    setNews({ kept: "none" });
    const release = holdDraft(open.draftId);
    // The next season lies in no file from the start.
    if (open.book.hasChanges()) keeper.changed();
    const stop = open.book.subscribe(() => (open.book.hasChanges() ? keeper.changed() : void keeper.drop()));
    return () => {
      stop();
      release();
    };
    // eslint-disable-next-line react-hooks/exhaustive-deps -- as above
  }, [open?.book, keeper]);

  const discard = useCallback((id: string) => {
    setLeft((drafts) => drafts.filter((draft) => draft.id !== id));
    browserDrafts
      .remove(id)
      .catch((fault: unknown) => setNews({ kept: "no", why: fault instanceof Error ? fault.message : String(fault) }));
  }, []);
  const taken = useCallback((id: string) => setLeft((drafts) => drafts.filter((draft) => draft.id !== id)), []);

  return { news, left, keeper, discard, taken };
}
