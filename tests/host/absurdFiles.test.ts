/** Tables and ranges over more cells than any memory holds: told in words, and nothing else is lost to them. */
import { expect, it } from "vitest";
import { readSeason } from "../../src/workbook/readSeason";
import { HostError } from "../../src/host/workbookHost";
import { fileOf } from "../support/xlsx/fixtureFile";
import { entries, opened } from "../support/xlsx/opened";
import type { FixtureSheet } from "./fixture";

const crops: FixtureSheet = {
  name: "Crops",
  cells: [
    ["Crop", "Yield unit", "Expected price"],
    ["Corn", "bu", 4],
  ],
  tables: [{ name: "Crops", range: "A1:C2" }],
};
const fields: FixtureSheet = {
  name: "Fields",
  cells: [
    ["Field", "Crop", "Acres", "Yield goal"],
    ["Alder", "Corn", 100, 200],
  ],
  tables: [{ name: "Fields", range: "A1:D2" }],
};
const sales = (range: string): FixtureSheet => ({
  name: "Sales",
  cells: [
    ["Crop", "Date", "Quantity", "Price"],
    ["Corn", 48_000, 900, 4],
  ],
  tables: [{ name: "Sales", range }],
});

it("tells a table that is drawn over a whole sheet, 17 billion cells, and reads the others", async () => {
  const content = await opened(fileOf({ sheets: [crops, fields, sales("A1:XFD1048576")] })).read();
  const { season, problems } = readSeason(content);
  expect(problems.map(({ code, at, found }) => [code, at, found])).toEqual([
    ["table-unreadable", { table: "Sales" }, "It covers A1:XFD1048576, which is more than can be read."],
  ]);
  expect([season.fields.length, season.sales.length]).toEqual([1, 0]);
});

it("reads a table that is drawn down to the last row", async () => {
  const { season, problems } = readSeason(await opened(fileOf({ sheets: [crops, fields, sales("A1:D1048576")] })).read());
  expect([season.sales.length, problems.map(({ code }) => code)]).toEqual([1, []]);
});

it("refuses in words a matched range with a stray entry in its far corner, 2,000 rows of 16,384 columns", async () => {
  const matches: FixtureSheet = {
    name: "Matches",
    tables: [{ name: "Matches", range: "A1:D2" }],
    cells: [
      ["Table", "Range", "Column", "Heading"],
      ["Sales", "Loads!A1:XFD1048576", "Crop", "What"],
    ],
  };
  const workbook = opened(fileOf({ sheets: [crops, fields, matches, { name: "Loads", cells: [["What"]] }] }));
  workbook.setCells("Loads", entries({ XFD2000: 1 }));
  await expect(workbook.read()).rejects.toThrow(
    new HostError(
      "failed",
      "The range Loads!A1:XFD1048576 of the table Matches cannot be read. It covers A1:XFD2000, which is more than can be read.",
    ),
  );
});
