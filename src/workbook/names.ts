/** Names that rows define and other rows refer to. */
import type { Named } from "./columns/column";
import { plain } from "./words";

/** What defining a name needs of its row. */
type NamingRow = { readonly needText: (column: Named) => string | null; readonly lose: (code: "duplicate-name", column: Named) => null };

/** The names that a table defines, found in any case and spacing. */
export class Names {
  private readonly byKey = new Map<string, string>();
  /** What each text was found to name, until a name is added or lost: thousands of rows name a few things. */
  private readonly found = new Map<string, string | null>();
  private readonly lost = new Set<string>();

  /** Leaves only the names whose rows could be read; the others are known to be lost. */
  keep(names: Iterable<string>): void {
    const kept = new Set([...names].map(plain));
    this.found.clear();
    for (const key of [...this.byKey.keys()].filter((each) => !kept.has(each))) {
      this.lost.add(key);
      this.byKey.delete(key);
    }
  }

  /** Makes a name unknown again whose row is only being entered: what refers to it is told, because nothing else tells that it waits. */
  forget(name: string): void {
    this.lost.delete(plain(name));
  }

  isLost(typed: string): boolean {
    return this.lost.has(plain(typed));
  }

  get all(): readonly string[] {
    return [...this.byKey.values()];
  }

  spelled(typed: string): string | null {
    let name = this.found.get(typed);
    if (name === undefined) this.found.set(typed, (name = this.byKey.get(plain(typed)) ?? null));
    return name;
  }

  /** Reads the column that names a row; a name that is there already loses the row. */
  define(row: NamingRow, column: Named): string | null {
    const name = row.needText(column);
    if (name === null) return null;
    if (this.spelled(name) !== null) return row.lose("duplicate-name", column);
    this.byKey.set(plain(name), name);
    this.found.clear();
    return name;
  }
}
