import { writeFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { partsOfPage } from "./checks";
import { disagreements } from "./disagreements";
import { checksHead, isLaws, lawsPart } from "../schema/checksPage";
import { laws } from "../schema/laws";

if (process.env["PENNYACRE_DOCS"] === "write") {
  const subjects = partsOfPage()
    .slice(1)
    .filter((part) => !isLaws(part))
    .sort();
  writeFileSync("docs/checks.md", [checksHead(subjects), ...subjects, lawsPart()].join(""));
}
const [head = "", ...subjects] = partsOfPage().filter((part) => !isLaws(part));

describe("docs/checks.md", () => {
  it("begins with what its subjects come to (npm run docs writes it)", () => {
    expect(head).toBe(checksHead(subjects));
  });
  it("has every disagreement that is listed, and none is listed that no test holds", () => {
    const shown = (text: string) => text.replaceAll("|", "/");
    const unheld = disagreements.flatMap(({ source, figures }) =>
      figures.flatMap(([prints]) => {
        const isHeld = subjects.some((part) =>
          part.split("\n").some((line) => line.includes(`| ${shown(source)} | ${prints} |`) && line.includes("| differs: ")),
        );
        return isHeld ? [] : [`${source}: ${prints}`];
      }),
    );
    expect(unheld).toEqual([]);
  });
  it("knows the laws by their titles and their runs", () => {
    const all = laws();
    expect(all.filter(({ isJudge }) => isJudge).length).toBeGreaterThanOrEqual(12);
    expect(all.filter(({ isJudge, title, runs }) => !isJudge && (title === "" || runs === ""))).toEqual([]);
  });
});
