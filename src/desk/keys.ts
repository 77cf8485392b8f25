/** What the keys of the grid mean while no cell is edited. */
import type { KeyStroke } from "./gridSelection";

export type KeyMeaning =
  | { readonly do: "move"; readonly stroke: KeyStroke; readonly keepsDefault?: false }
  | { readonly do: "clear" | "undo" | "redo" | "leave" | Tool; readonly keepsDefault?: false }
  /** `text` replaces what the cell holds; `null` keeps it. The browser's own handling goes on where composing must begin. */
  | { readonly do: "edit"; readonly text: string | null; readonly keepsDefault?: boolean };

/** What the tools above the grid do, by keys. */
type Tool = "insert" | "delete" | "fill" | "sort up" | "sort down" | "wider" | "narrower" | "filter" | "find" | "print";

/** A key press as the browser reports it. */
export type KeyPress = {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
};

const moves = new Set(["ArrowUp", "ArrowDown", "ArrowLeft", "ArrowRight", "Home", "End", "PageUp", "PageDown", "Enter", "Tab"]);

/** The meaning of a key in the grid; `null` for one that is the browser's, such as Ctrl+C or F5. */
export function keyMeaning({ key, shiftKey: shift, ctrlKey, metaKey, altKey }: KeyPress): KeyMeaning | null {
  const ctrl = ctrlKey || metaKey;
  const tool = toolOf(key, { shift, ctrl, alt: altKey });
  if (tool !== null) return { do: tool };
  if (altKey && key === "ArrowDown") return { do: "edit", text: null };
  if (altKey && !ctrlKey) return null;
  if (moves.has(key) || (key === " " && (shift || ctrl))) return { do: "move", stroke: { key, shift, ctrl } };
  if (ctrl && !altKey) {
    switch (key.toLowerCase()) {
      case "a":
        return { do: "move", stroke: { key: "a", shift: false, ctrl } };
      case "z":
        return { do: shift ? "redo" : "undo" };
      case "y":
        return { do: "redo" };
      default:
        return null;
    }
  }
  switch (key) {
    case "F2":
      return { do: "edit", text: null };
    case "Delete":
    case "Backspace":
      return { do: "clear" };
    case "Escape":
      return { do: "leave" };
    // The first key of a composed character: the editor must be there before the browser goes on with it.
    case "Process":
    case "Dead":
      return { do: "edit", text: "", keepsDefault: true };
    default:
      return [...key].length === 1 ? { do: "edit", text: key } : null;
  }
}

function toolOf(
  key: string,
  { shift, ctrl, alt }: { readonly shift: boolean; readonly ctrl: boolean; readonly alt: boolean },
): Tool | null {
  if (alt && shift && !ctrl)
    return ({ ArrowUp: "sort up", ArrowDown: "sort down", ArrowRight: "wider", ArrowLeft: "narrower" } as const)[key] ?? null;
  if (alt) return null;
  if (ctrl)
    return key === "Delete" ? "delete" : (({ d: "fill", f: shift ? "filter" : "find", p: "print" } as const)[key.toLowerCase()] ?? null);
  return key === "Insert" && !shift ? "insert" : null;
}
