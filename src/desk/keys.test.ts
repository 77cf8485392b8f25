import { expect, it } from "vitest";
import { keyMeaning, type KeyPress } from "./keys";

const press = (key: string, held: Partial<KeyPress> = {}): KeyPress => ({
  key,
  shiftKey: false,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  ...held,
});

it.each([
  ["a letter begins an entry", press("u"), { do: "edit", text: "u" }],
  ["a capital", press("U", { shiftKey: true }), { do: "edit", text: "U" }],
  ["a character of two code units", press("🌽"), { do: "edit", text: "🌽" }],
  ["a character typed with AltGr", press("€", { ctrlKey: true, altKey: true }), { do: "edit", text: "€" }],
  ["a plain space begins an entry", press(" "), { do: "edit", text: " " }],
  ["F2 edits what is there", press("F2"), { do: "edit", text: null }],
  ["Alt+Down opens the cell's list", press("ArrowDown", { altKey: true }), { do: "edit", text: null }],
  ["Delete clears", press("Delete"), { do: "clear" }],
  ["Ctrl+Z", press("z", { ctrlKey: true }), { do: "undo" }],
  ["Command+Z of a Mac", press("z", { metaKey: true }), { do: "undo" }],
  ["Ctrl+Shift+Z", press("Z", { ctrlKey: true, shiftKey: true }), { do: "redo" }],
  ["Ctrl+Y", press("y", { ctrlKey: true }), { do: "redo" }],
  ["Escape lets Tab leave", press("Escape"), { do: "leave" }],
  ["Shift+Space selects the row", press(" ", { shiftKey: true }), { do: "move", stroke: { key: " ", shift: true, ctrl: false } }],
  ["Ctrl+C is the browser's", press("c", { ctrlKey: true }), null],
  ["F5 is the browser's", press("F5"), null],
  ["Alt+Left is the browser's", press("ArrowLeft", { altKey: true }), null],
])("%s", (_what, pressed, meaning) => expect(keyMeaning(pressed)).toEqual(meaning));

it("has keys for the tools above the grid, which take none from entering", () => {
  const does = (key: string, held: Parameters<typeof press>[1] = {}) => keyMeaning(press(key, held))?.do;
  const ctrlKey = true;
  expect([
    does("Insert"),
    does("Delete", { ctrlKey }),
    does("d", { ctrlKey }),
    does("f", { ctrlKey }),
    does("F", { ctrlKey, shiftKey: true }),
    does("p", { ctrlKey }),
  ]).toEqual(["insert", "delete", "fill", "find", "filter", "print"]);
  expect(["ArrowUp", "ArrowDown", "ArrowRight", "ArrowLeft"].map((key) => does(key, { altKey: true, shiftKey: true }))).toEqual([
    "sort up",
    "sort down",
    "wider",
    "narrower",
  ]);
  expect([does("Delete"), does("ArrowDown", { altKey: true }), does("d")]).toEqual(["clear", "edit", "edit"]);
});
