import { describe } from "vitest";
import { openWorkbook } from "../../src/host/embedded";
import { parseArea } from "../../src/host/address";
import { describeWorkbookHost, type OpenedHost } from "./workbookHost.contract";
import type { Fixture } from "./fixture";
import { embeddedSnapshot } from "../support/embeddedSnapshot";
import { fileOf } from "../support/xlsx/fixtureFile";

describe("the embedded workbook", () => {
  describeWorkbookHost("the embedded workbook", open);
});

/** The fixture as a real file, written part by part and opened as any other. */
async function open(fixture: Fixture): Promise<OpenedHost> {
  const opened = openWorkbook(fileOf(fixture));
  if (!opened.ok) throw new Error(opened.problems.map(({ message }) => message).join(" "));
  const workbook = opened.value;
  return {
    host: workbook,
    snapshot: () => Promise.resolve(embeddedSnapshot(workbook)),
    type: (sheet, cell, value) => {
      const { top, left } = parseArea(cell)!;
      workbook.setCells(sheet, [{ row: top, column: left, value }]);
      return Promise.resolve();
    },
    pick: (sheet, range) => {
      workbook.pick(sheet, range);
      return Promise.resolve();
    },
    close: () => Promise.resolve(),
  };
}
