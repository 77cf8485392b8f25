import { writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { partsOfPage } from "./checks";
import { disagreements } from "./disagreements";
import { decimalsOf } from "./printRange";
import { checksHead, isLaws, lawsPart, tableAfter } from "../schema/checksPage";
import { laws } from "../schema/laws";

if (process.env["PENNYACRE_DOCS"] === "write") {
  const subjects = partsOfPage()
    .slice(1)
    .filter((part) => !isLaws(part))
    .sort();
  writeFileSync("docs/checks.md", [checksHead(subjects), ...subjects, lawsPart()].join(""));
}
const [head = "", ...subjects] = partsOfPage().filter((part) => !isLaws(part));

/** Whether what the page shows of ours is what the list says at fewer digits. */
const isAt = (shown: string, ours: string): boolean => new Decimal(shown).toFixed(decimalsOf(ours), Decimal.ROUND_HALF_UP) === ours;

describe("docs/checks.md", () => {
  it("begins with what its subjects come to (npm run docs writes it)", () => {
    expect(head).toBe(checksHead(subjects));
  });
  it("pairs the disagreements that are listed with the figures that differ, one with one, none left over on either side", () => {
    const shown = (text: string) => text.replaceAll("|", "/");
    const differing = subjects.flatMap((part) => tableAfter(part, "figure").filter((cells) => cells.at(-1)!.startsWith("differs: ")));
    const figures = differing.map(([, , source, prints, ours]) => ({ source: source!, prints: prints!, ours: ours! }));
    const unheld = disagreements.flatMap(({ source, figures: pairs }) =>
      pairs.flatMap(([prints, ours]) => {
        const at = figures.findIndex((each) => each.source === shown(source) && each.prints === prints && isAt(each.ours, ours));
        // Each figure answers for one pair.
        return at >= 0 && figures.splice(at, 1).length === 1 ? [] : [`${source}: ${prints} against ${ours}`];
      }),
    );
    expect(unheld, "listed, and no figure of a test").toEqual([]);
    expect(figures, "differ, and are listed for another figure").toEqual([]);
  });
  it("knows the laws by their titles and their runs", () => {
    const all = laws();
    expect(all.filter(({ isJudge }) => isJudge).length).toBeGreaterThanOrEqual(12);
    expect(all.filter(({ isJudge, title, runs }) => !isJudge && (title === "" || runs === ""))).toEqual([]);
  });
});
