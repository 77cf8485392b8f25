/** Drafts of workbooks in the browser's own storage, against a crash, a closed tab or a power cut. */

/** A workbook as it was after an entry. */
export type Draft = {
  readonly id: string;
  readonly name: string;
  /** When it was kept, in milliseconds since 1970. */
  readonly at: number;
  readonly bytes: Uint8Array;
  /** Its workbook went to the browser's downloads since; whether it arrived there nobody can tell. */
  readonly isHandedOut: boolean;
};

export interface DraftStore {
  keep(draft: Draft): Promise<void>;
  all(): Promise<readonly Draft[]>;
  remove(id: string): Promise<void>;
}

const [database, table] = ["pennyacre", "drafts"];

/** The drafts of this browser for pages of this address. Rejects where the browser keeps nothing or has no room. */
export const browserDrafts: DraftStore = {
  keep: async (draft) => {
    await inStore("readwrite", (store) => store.put(draft));
  },
  all: () => inStore("readonly", (store) => store.getAll() as IDBRequest<Draft[]>),
  remove: async (id) => {
    await inStore("readwrite", (store) => store.delete(id));
  },
};

/** One request as a whole: resolves once the browser says that it lies in the storage, not before. */
function inStore<Value>(mode: IDBTransactionMode, ask: (store: IDBObjectStore) => IDBRequest<Value>): Promise<Value> {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(database, 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore(table, { keyPath: "id" });
    opening.onerror = () => reject(faultOf(opening.error));
    opening.onblocked = () => reject(new Error("another tab holds the storage"));
    opening.onsuccess = () => {
      const done = opening.result.transaction(table, mode, { durability: "strict" });
      let request: IDBRequest<Value>;
      try {
        request = ask(done.objectStore(table));
      } catch (fault) {
        opening.result.close();
        return reject(faultOf(fault instanceof DOMException ? fault : null));
      }
      const end = (fault: DOMException | null) => {
        opening.result.close();
        if (fault === null) resolve(request.result);
        else reject(faultOf(fault));
      };
      done.oncomplete = () => end(null);
      done.onabort = () => end(done.error ?? request.error ?? new DOMException("it was broken off", "AbortError"));
    };
  });
}

const faultOf = (fault: DOMException | null): Error =>
  new Error(fault?.name === "QuotaExceededError" ? "its storage is full" : fault?.message || fault?.name || "it refused");

/** A name for the drafts of one workbook that is open. */
export const newDraftId = (): string => `${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 10)}`;

const lockOf = (id: string): string => `pennyacre draft ${id}`;

/** Says to other tabs that a draft's workbook is open here; returns what ends that. The browser ends it by itself with the tab. */
export function holdDraft(id: string): () => void {
  let release = () => {};
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  // Without locks every draft is offered, also that of a workbook still open in another tab, which is better than none.
  navigator.locks?.request(lockOf(id), () => held).catch(() => undefined);
  return release;
}

/** The drafts whose workbook is open nowhere, the newest first. */
export async function leftDrafts(store: DraftStore): Promise<readonly Draft[]> {
  const [drafts, locks] = await Promise.all([store.all(), navigator.locks?.query()]);
  const open = new Set((locks?.held ?? []).map(({ name }) => name));
  return drafts.filter(({ id }) => !open.has(lockOf(id))).sort((one, other) => other.at - one.at);
}
