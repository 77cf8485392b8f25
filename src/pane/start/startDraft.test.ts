import { describe, expect, it } from "vitest";
import { Decimal } from "../../core/numbers/decimal";
import { formatOf } from "../format";
import { startAnswers, startLacks, startReport } from "./startAnswer";
import { acreKinds, farmKinds, linesShown, startView, type StartBasis, type StartDraft } from "./startDraft";

const basis: StartBasis = { crops: [], fields: [], loans: [], seasonYear: null, decimalComma: false, currency: "USD" };
const corn: StartDraft = { year: "2031", "crop 0 name": "Corn", "crop 0 acres": "200", "crop 0 goal": "200", "crop 0 price": "4.50" };
const view = (more: StartDraft = {}, from: StartBasis = basis) => startView({ ...corn, ...more }, from);
const plainRows = (of: ReturnType<typeof view>) =>
  Object.fromEntries(
    of.entries.map(({ table, rows }) => [
      table,
      rows.map((row) =>
        Object.fromEntries([...row].map(([heading, value]) => [heading, value instanceof Decimal ? value.toFixed() : value])),
      ),
    ]),
  );

describe("what Start writes", () => {
  it("is a crop, its field, and nothing that was left blank", () => {
    expect(plainRows(view())).toEqual({
      Season: [{ Setting: "Season year", Value: "2031" }],
      Crops: [{ Crop: "Corn", "Yield unit": "bu", "Expected price": "4.5" }],
      Fields: [{ Field: "All corn", Crop: "Corn", Acres: "200", "Yield goal": "200" }],
    });
    expect(view().faults).toEqual({});
  });

  it("is a line of Budget for each amount, by the acre of its crop or for the whole farm", () => {
    const { Budget } = plainRows(view({ "need 0 seed": "115", "need 0 fuel": "0", "whole overhead": "12,500" }));
    expect(Budget).toEqual([
      { For: "Corn", Kind: "seed", Amount: "115", Basis: "per acre" },
      { For: "Corn", Kind: "fuel", Amount: "0", Basis: "per acre" },
      { For: "all", Kind: "overhead", Amount: "12500", Basis: "whole" },
    ]);
  });

  it("is how the land is held, and what is owed", () => {
    const { Fields, Loans } = plainRows(
      view({
        "land 0 share": "50%",
        "loan 0 name": "Barn",
        "loan 0 balance": "60000",
        "loan 0 rate": "5",
        "loan 0 payment": "8000",
        "loan 0 due": "3/1",
      }),
    );
    expect(Fields).toMatchObject([{ Tenure: "crop share", "Operator share of crop %": "0.5" }]);
    expect(Loans).toEqual([
      {
        Name: "Barn",
        Kind: "term",
        Balance: "60000",
        Rate: "0.05",
        Payment: "8000",
        "Payments a year": "1",
        "Next due": { day: "2031-03-01" },
      },
    ]);
    expect(plainRows(view({ "land 0 rent": "240" })).Fields).toMatchObject([{ Tenure: "cash rent", "Rent per acre": "240" }]);
    expect(plainRows(view({ "land 0 charge": "200" })).Fields).toMatchObject([{ Tenure: "owned", "Land charge per acre": "200" }]);
  });

  it("is no year where the workbook has one", () => {
    expect(plainRows(view({ year: "" }, { ...basis, seasonYear: "2030" }))).not.toHaveProperty("Season");
  });
});

describe("what Start asks to be mended", () => {
  it.each<[string, StartDraft, string, string]>([
    ["a crop without a name", { "crop 1 acres": "80" }, "crop 1 name", "Name the crop."],
    [
      "a crop without its acres",
      { "crop 1 name": "Oats", "crop 1 goal": "80", "crop 1 price": "3" },
      "crop 1 acres",
      "Enter a number above zero.",
    ],
    [
      "a crop typed twice",
      { "crop 1 name": "CORN", "crop 1 acres": "80", "crop 1 goal": "80", "crop 1 price": "3" },
      "crop 1 name",
      "CORN is there already.",
    ],
    ["an amount that is no number", { "need 0 seed": "1l5" }, "need 0 seed", "Enter a number."],
    ["an amount below zero", { "whole overhead": "-5" }, "whole overhead", "Enter zero or more."],
    ["rent beside a share", { "land 0 rent": "240", "land 0 share": "50" }, "land 0 share", "Rent or a share of the crop, not both."],
    ["a share as a fraction", { "land 0 share": "0.05" }, "land 0 share", "Enter percent, such as 50."],
    ["a loan without a name", { "loan 0 balance": "60000" }, "loan 0 name", "Name the loan."],
    [
      "a loan without its balance",
      { "loan 0 name": "Barn", "loan 0 rate": "5", "loan 0 payment": "8000", "loan 0 due": "3/1" },
      "loan 0 balance",
      "Enter a number.",
    ],
    [
      "a rate as a fraction",
      { "loan 0 name": "Barn", "loan 0 balance": "1", "loan 0 rate": "0.05" },
      "loan 0 rate",
      "Enter percent, such as 7.5.",
    ],
    [
      "a term loan without a due date",
      { "loan 0 name": "Barn", "loan 0 balance": "1", "loan 0 rate": "5", "loan 0 payment": "1" },
      "loan 0 due",
      "Enter the date of the next payment, such as 2026-12-01.",
    ],
    [
      "a number of payments that makes no even months",
      { "loan 0 name": "Barn", "loan 0 balance": "1", "loan 0 rate": "5", "loan 0 payment": "1", "loan 0 due": "3/1", "loan 0 often": "5" },
      "loan 0 often",
      "Enter 1, 2, 3, 4, 6 or 12.",
    ],
    ["no year", { year: "26" }, "year", "Enter the year of the harvest, such as 2026."],
  ])("%s", (_what, more, box, words) => {
    expect(view(more).faults[box]).toBe(words);
  });

  it("what the workbook has already", () => {
    const there = { ...basis, crops: ["Corn"], loans: ["Barn"] };
    expect(
      view({ "loan 0 name": "barn", "loan 0 balance": "1", "loan 0 rate": "5", "loan 0 payment": "1", "loan 0 due": "3/1" }, there).faults,
    ).toMatchObject({ "crop 0 name": "Corn is there already.", "loan 0 name": "barn is there already." });
  });

  it("nothing typed at all", () => {
    expect(startView({ year: "2031" }, basis)).toMatchObject({
      faults: { "crop 0 name": "Name the first crop." },
      entries: [{ table: "Season" }],
    });
  });
});

it("shows a blank line below what is begun", () => {
  expect([
    linesShown({}, "crop"),
    linesShown(corn, "crop"),
    linesShown({ "loan 2 name": "x" }, "loan"),
    linesShown({ "crop 4 name": " " }, "crop"),
  ]).toEqual([0, 1, 3, 0]);
});

it("reads every number as the workbook does", () => {
  expect(plainRows(view({ "crop 0 price": "4,50", "need 0 seed": "1.150,50" }, { ...basis, decimalComma: true })).Budget).toMatchObject([
    { Amount: "1150.5" },
  ]);
});

it("answers with the figures that the workbook will give, and says what they lack", () => {
  const typed = view({ "need 0 seed": "120", "need 0 fertilizer": "150", "whole overhead": "6000" });
  // (120 + 150) + 6,000 ÷ 200 = 300 an acre: 300 ÷ 200 = 1.50 a bushel; 300 ÷ 4.50 = 66.67 bushels.
  const report = startReport(typed.entries);
  expect(report.problems.filter(({ code }) => code !== "capital-not-charged")).toEqual([]);
  expect(startAnswers(report, formatOf({ currency: "USD", areaUnit: "ac" }, "en-US"))).toEqual([
    { crop: "Corn", cost: "300.00", price: "1.50 a bu", yield: "66.7 bu" },
  ]);
  expect(startAnswers(startReport(view().entries), formatOf({ currency: "USD", areaUnit: "ac" }, "en-US"))).toEqual([
    { crop: "Corn", cost: "–", price: "–", yield: "–" },
  ]);
  expect(startLacks(typed)).toBe(`before rent and loans; ${acreKinds.length + farmKinds.length - 3} kinds of cost blank`);
  expect(startLacks({ hasLand: true, hasLoans: true, blankKinds: 1 })).toBe("1 kind of cost blank");
});
