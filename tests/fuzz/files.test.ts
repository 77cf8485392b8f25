/** Workbook files with random damage: refused in words, or opened, read, changed and saved without a part being lost. */
import { readFileSync } from "node:fs";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { it } from "vitest";
import { openWorkbook } from "../../src/host/embedded";
import { engineInNode } from "../../src/host/embedded/recalculation/loadInNode";
import { HostError } from "../../src/host/workbookHost";
import { seasonReport } from "../../src/workbook/report";
import { reportJson } from "../../src/workbook/reportJson";
import type { Habits } from "../exact/typing";
import { fuzz, longest, noValues } from "./cases";

const files = ["seasonFormulas", "seasonTyped", "openpyxl", "libreoffice"].map(
  (name) => new Uint8Array(readFileSync(`tests/fixtures/${name}.xlsx`)),
);
const pieces = [
  "<",
  ">",
  "/>",
  '"',
  "&",
  "]]>",
  "<!--",
  "<c>",
  "</row>",
  'r="A0"',
  'r="XFD1048577"',
  't="s"',
  "<v>-1</v>",
  "<v>1e999</v>",
  "<f>A1</f>",
  "NaN",
  "\u0000",
] as const;

/** The text with pieces cut, doubled, moved or put in. */
function spoiled(text: string, habits: Habits): string {
  let now = text;
  for (let left = 1 + habits.below(4); left > 0; left -= 1) {
    const at = habits.below(now.length + 1);
    const length = habits.pick(1, 1 + habits.below(20), 1 + habits.below(2000));
    const [before, piece, after] = [now.slice(0, at), now.slice(at, at + length), now.slice(at + length)];
    now = habits.pick(
      () => before + after,
      () => before + piece + piece + after,
      () => before + habits.pick(...pieces) + after,
      () => before + habits.pick(...pieces) + piece + after,
      () => before + piece.replaceAll(/\d/g, () => String(habits.below(10))) + after,
    )();
  }
  return now;
}

function spoiledFile(habits: Habits): Uint8Array {
  const file = habits.pick(files[0]!, ...files.slice(1));
  if (habits.below(8) === 0) {
    const bytes = file.slice(0, habits.below(5) === 0 ? habits.below(file.length) : file.length);
    for (let left = 1 + habits.below(6); left > 0; left -= 1) bytes[habits.below(Math.max(1, bytes.length))] = habits.below(256);
    return bytes;
  }
  const parts = unzipSync(file);
  const names = Object.keys(parts).sort();
  for (let left = 1 + habits.below(2); left > 0; left -= 1) {
    const name = names[habits.below(names.length)]!;
    parts[name] = strToU8(spoiled(strFromU8(parts[name]!), habits));
  }
  return zipSync(parts, { level: 1 });
}

async function faultsOf(bytes: Uint8Array): Promise<readonly string[]> {
  const opened = openWorkbook(bytes, { engine: engineInNode });
  if (!opened.ok)
    return noValues(
      opened.problems.map(({ message }) => message),
      "refused",
    );
  const workbook = opened.value;
  const before = [...workbook.parts().keys()];
  try {
    const report = seasonReport(await workbook.read());
    const [sheet] = workbook.sheets();
    workbook.setCells(sheet!.name, [{ row: 300, column: 3, value: 7 }]);
    await workbook.settled();
    const saved = workbook.save();
    const again = openWorkbook(saved);
    if (!again.ok) return [`what was saved is refused: ${again.problems[0]?.message}`];
    const after = new Set(again.value.parts().keys());
    const lost = before.filter((name) => !after.has(name) && !name.endsWith("calcChain.xml"));
    return [...lost.map((name) => `${name} is lost`), ...noValues(reportJson(report), "report")];
  } catch (fault) {
    // What a workbook does not allow is said in words.
    if (fault instanceof HostError) return noValues(fault.message, "told");
    throw fault;
  }
}

it("workbook files", { timeout: longest }, () => fuzz("files", 120, (habits) => faultsOf(spoiledFile(habits))));
