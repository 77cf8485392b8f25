/**
 * The reports of random workbooks and of the demo stay what they are, unless somebody means to change them: a change of how a season
 * is worked out must not move a figure, a word or a problem. After a change on purpose `PENNYACRE_FREEZE=1 npx vitest run --project
 * unit tests/exact/frozenReports.test.ts` freezes anew; the commit says why.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { seasonReport } from "../../src/workbook/report";
import { toFix } from "../../src/workbook/problem";
import { demo } from "../support/demoReport";
import { canonicalReport, lettersOf } from "./frozenReport";
import { isLong } from "./judge";
import { randomWorkbook } from "./randomWorkbook";

type Frozen = { readonly demo: string; readonly demoWithProblems: string; readonly workbooks: readonly string[] };
const file = fileURLToPath(new URL("frozenReports.json", import.meta.url));
const isFreezing = process.env.PENNYACRE_FREEZE === "1";
/** A mutation is noticed by the first report that is another, of a third of them. */
const oneSuffices = process.env.PENNYACRE_MUTATION !== undefined;
const workbooksInLine = 20;
const all = 2_000;

const lettersOfWorkbook = (number: number): string => lettersOf(seasonReport(randomWorkbook(number)));
const lineOf = (line: number): string =>
  Array.from({ length: workbooksInLine }, (_, index) => lettersOfWorkbook(line * workbooksInLine + index)).join(" ");

describe("the reports of workbooks", () => {
  it.runIf(isFreezing)("are frozen anew", { timeout: 900_000 }, async () => {
    const frozen: Frozen = {
      demo: lettersOf((await demo()).report),
      demoWithProblems: lettersOf((await demo("demo-season-with-problems")).report),
      workbooks: Array.from({ length: all / workbooksInLine }, (_, line) => lineOf(line)),
    };
    writeFileSync(file, `${JSON.stringify(frozen, null, 2)}\n`);
    expect(frozen.workbooks).toHaveLength(all / workbooksInLine);
  });

  it("are what they were", { timeout: 900_000 }, async () => {
    const frozen = JSON.parse(readFileSync(file, "utf8")) as Frozen;
    const moved: string[] = [];
    // Every eighth workbook is of another sort: a step without a part in common with eight meets all sorts.
    const step = isLong ? 1 : oneSuffices ? 33 : 11;
    for (let number = 0; number < all; number += step) {
      const was = frozen.workbooks[Math.floor(number / workbooksInLine)]!.split(" ")[number % workbooksInLine];
      if (lettersOfWorkbook(number) !== was) moved.push(`workbook ${number}`);
      if (oneSuffices) expect(moved).toEqual([]);
    }
    if (lettersOf((await demo()).report) !== frozen.demo) moved.push("the demo");
    if (lettersOf((await demo("demo-season-with-problems")).report) !== frozen.demoWithProblems) moved.push("the demo with problems");
    expect(moved).toEqual([]);
  });

  it("are of farms as they are: of a third and more the figures are complete, and no number is none", () => {
    let complete = 0;
    const [looked, step] = [100, 19];
    for (let count = 0; count < looked; count += 1) {
      const report = seasonReport(randomWorkbook(count * step));
      if (toFix(report.problems).length === 0) complete += 1;
      expect(canonicalReport(report), `workbook ${count * step}`).not.toMatch(/NaN|Infinity|undefined/);
    }
    console.log(`random workbooks with complete figures: ${complete} of ${looked}`);
    expect(complete).toBeGreaterThan(looked / 3);
  });
});
