/** What is typed and not entered yet, kept while the pane's window lives, so that opening another page from the ribbon loses none of it. */

export type KeptTyping = {
  /** What was kept under a name; `undefined` where nothing is. */
  readonly read: (name: string) => unknown;
  /** Keeps a value; `undefined` lets it go. `isTyped`: somebody typed it, and it would be lost with the page. */
  readonly write: (name: string, value: unknown, isTyped?: boolean) => void;
};

/** What is typed beside one workbook of a page that may open another one in its place. */
export type KeptBeside = KeptTyping & {
  /** Whether something is typed that is not entered yet. */
  readonly holdsTyped: () => boolean;
};

/** Kept for as long as the page lives. */
export function keptInPage(): KeptBeside {
  const kept = new Map<string, { readonly value: unknown; readonly isTyped: boolean }>();
  return {
    read: (name) => kept.get(name)?.value,
    write: (name, value, isTyped = false) => void (value === undefined ? kept.delete(name) : kept.set(name, { value, isTyped })),
    holdsTyped: () => [...kept.values()].some(({ isTyped }) => isTyped),
  };
}

/** For a pane by itself, whose window is never loaded anew under its user's hands. */
export const keptNowhere: KeptTyping = { read: () => undefined, write: () => undefined };

/** As much of a browser's storage as is used here. */
type Storing = Pick<Storage, "getItem" | "setItem" | "removeItem">;

/**
 * Kept in the storage of the window's session. `of` names the workbook and the version: what was typed for one workbook is never shown
 * in another, nor what one version kept in the next. A browser that gives no storage keeps nothing, as before a first visit.
 */
export function keptInSession(storage: () => Storing, of: string): KeptTyping {
  const key = (name: string): string => `Pennyacre ${of} ${name}`;
  const tried = <Value>(work: (store: Storing) => Value): Value | undefined => {
    try {
      return work(storage());
    } catch (error) {
      // Storage is refused or full; typing goes on all the same.
      if (error instanceof DOMException) return undefined;
      throw error;
    }
  };
  return {
    read: (name) => {
      const text = tried((store) => store.getItem(key(name))) ?? null;
      return text === null ? undefined : (JSON.parse(text) as unknown);
    },
    write: (name, value) => {
      tried((store) => (value === undefined ? store.removeItem(key(name)) : store.setItem(key(name), JSON.stringify(value))));
    },
  };
}
