import type { Draft, DraftStore } from "./drafts";
import type { Later } from "./later";

/** How it stands with the draft of the open workbook, for the page to say. */
export type DraftNews = { readonly kept: "yes" } | { readonly kept: "no"; readonly why: string } | { readonly kept: "none" };

export type Kept = { readonly id: string; readonly name: string; readonly bytes: () => Promise<Uint8Array> };

/** Milliseconds from an entry to its draft: a run of keys makes one. */
export const quietBeforeDraft = 300;

/**
 * Keeps the draft of one open workbook after each entry. One draft is written at a time; what comes meanwhile is written once
 * that is done, so that the last one always lies in the storage.
 */
export class DraftKeeper {
  private callOff = () => {};
  private work: Promise<void> = Promise.resolve();

  constructor(
    private readonly store: DraftStore,
    private readonly kept: Kept,
    private readonly later: Later,
    private readonly tell: (news: DraftNews) => void,
    private readonly today: () => number = Date.now,
  ) {}

  /** The workbook has changed. */
  changed(): void {
    this.callOff();
    this.callOff = this.later(quietBeforeDraft, () => void this.write(false));
  }

  /** The workbook went to the browser's downloads: the draft stays until somebody says that the file is there. */
  handedOut(): Promise<void> {
    return this.write(true);
  }

  /** Nothing of the workbook is unsaved any more, or nobody wants it. */
  drop(): Promise<void> {
    this.callOff();
    return this.after(async () => {
      await this.store.remove(this.kept.id);
      this.tell({ kept: "none" });
    });
  }

  private write(isHandedOut: boolean): Promise<void> {
    this.callOff();
    return this.after(async () => {
      const { id, name, bytes } = this.kept;
      const draft: Draft = { id, name, at: this.today(), bytes: await bytes(), isHandedOut };
      await this.store.keep(draft);
      this.tell({ kept: "yes" });
    });
  }

  private after(work: () => Promise<void>): Promise<void> {
    this.work = this.work
      .then(work)
      .catch((fault: unknown) => this.tell({ kept: "no", why: fault instanceof Error ? fault.message : String(fault) }));
    return this.work;
  }
}
