import { describe, expect, it } from "vitest";
import { countedContent, paneContent } from "../../../tests/support/paneWorkbook";
import { seasonReport } from "../../workbook/report";
import { shownPriceNeeded } from "../../workbook/shown";
import { formatOf } from "../format";
import type { Problem } from "../../workbook/problem";
import { openRowWords, writtenWords } from "../parts/WriteButton";
import { firstChoice, lenderPreview, sheetsOf } from "./lenderView";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const report = seasonReport(countedContent);

describe("the lender pages before they are written", () => {
  it("begin with every crop, cash need and the cash flow", () => {
    const choice = firstChoice(report);
    expect(choice).toEqual({ crops: ["Corn", "Soybeans"], layer: "cashNeed", companions: new Set(["Cash flow"]) });
    expect(sheetsOf(report, choice, "2031-06-05").map(({ name }) => name)).toEqual(["Lender pages", "Cash flow"]);
    expect(
      sheetsOf(report, { ...choice, companions: new Set(["Break-even", "Cost per acre"]) }, "2031-06-05").map(({ name }) => name),
    ).toEqual(["Lender pages", "Cost per acre", "Break-even"]);
  });

  it("carry the crops, the layer and the day that were chosen", () => {
    const [pages] = sheetsOf(report, { crops: ["Soybeans"], layer: "full", companions: new Set() }, "2031-06-05");
    const words = pages!.rows.flat().map(({ value }) => String(value));
    expect(words.some((each) => each.includes("as of 2031-06-05"))).toBe(true);
    expect(words.some((each) => each.startsWith("Corn"))).toBe(false);
    expect(words.some((each) => each.includes("full cost"))).toBe(true);
  });

  it("are previewed with what they lead with: break-evens, the loan's peak, the debt test", () => {
    const { main, crops, farm } = lenderPreview(report, { crops: ["Corn"], layer: "cash", companions: new Set() }, format);
    expect(crops.map(({ columns }) => columns)).toEqual([["Corn"]]);
    const corn = report.figures.crops[0]!.outlook;
    expect(crops[0]!.rows.find(({ name }) => name === "Price needed")!.cells).toEqual([format.priceNeeded(corn.breakEvenPrice.cash)]);
    const says = Object.fromEntries(farm.map(({ name, says: words }) => [name, words]));
    expect(says["Operating loan at its peak"]).toMatch(/^[\d,.]+ USD, end of \w{3} 2031$/);
    // One payment of 17,000 a year on the land note, and 8 % of the 40,000 that the line carries.
    expect(says["Interest and principal due"]).toBe("20,200.00 USD a year");
    expect(main.figure).toMatch(/^−?\d+\.\d\d times$/);
    expect(main.unit).toContain("a year against 20,200.00 USD of interest and principal");
  });

  it("say that there is no term debt where none is entered, and lead with the operating loan", () => {
    const without = seasonReport({ ...paneContent, tables: paneContent.tables.filter(({ name }) => name !== "Other_costs") });
    const { farm, main } = lenderPreview(without, firstChoice(without), format);
    expect(farm.find(({ name }) => name === "Interest and principal due")!.says).toBe("no term debt");
    expect(main.unit).toContain("no term debt is entered");
  });

  it("name the crops whose expected price falls short of the layer, by the cents shown", () => {
    const [corn] = report.figures.crops;
    expect(lenderPreview(report, { crops: ["Corn"], layer: "operating", companions: new Set() }, format).short).toBe("");
    const dear = seasonReport({
      ...countedContent,
      tables: countedContent.tables.map((table) =>
        table.name !== "Crops"
          ? table
          : { ...table, rows: table.rows.map((row) => row.map((cell, index) => (table.headers[index] === "Expected price" ? 0.5 : cell))) },
      ),
    });
    const needed = dear.figures.crops[0]!.outlook.breakEvenPrice.cashNeed!;
    expect(corn!.outlook.price.toFixed()).toBe("4.35");
    expect(lenderPreview(dear, { ...firstChoice(dear), crops: ["Corn"] }, format).short).toBe(
      `Corn needs ${format.priceNeeded(needed)} a bu for cash need: ${format.money(shownPriceNeeded(needed).minus("0.5"))} more ` +
        "than its expected price.",
    );
  });

  it("stand three crops beside each other and the fourth below", () => {
    const [corn, soybeans] = report.figures.crops;
    const four = {
      ...report,
      figures: { ...report.figures, crops: [corn!, soybeans!, { ...corn!, crop: "Sorghum" }, { ...corn!, crop: "Oats" }] },
    };
    expect(
      lenderPreview(four, { ...firstChoice(report), crops: ["Corn", "Soybeans", "Sorghum", "Oats"] }, format).crops.map(
        ({ columns }) => columns.length,
      ),
    ).toEqual([3, 1]);
  });

  it("are named once they are written", () => {
    const sheets = sheetsOf(report, firstChoice(report), "2031-06-05");
    expect(writtenWords(sheets, ["Lender pages", "Cash flow"], "as of Jun 5, 2031")).toBe(
      "The sheets “Lender pages” and “Cash flow” were written as of Jun 5, 2031. Our earlier ones of the same name were made again; " +
        "a sheet of your own is never touched.",
    );
    expect(writtenWords(sheets.slice(0, 1), ["Lender pages"], "")).toMatch(/^The sheet “Lender pages” was written\./);
    expect(writtenWords(sheets.slice(0, 1), ["Lender pages (2)"], "")).toMatch(
      /^The sheet “Lender pages \(2\)” was written\. .* The name “Lender pages” was taken by a sheet of your own\.$/,
    );
  });
});

describe("writing while a row is being entered", () => {
  it("waits, and says which row and what it lacks", () => {
    const open: Problem = { code: "row-open", at: { table: "Purchases", row: 5 }, found: "Urea", like: "Date, Quantity", touches: [] };
    expect(openRowWords([open])).toBe(
      "Purchases, entry 5 is being entered (Urea) and not counted yet. Fill Date, Quantity, or delete the entry. Then write.",
    );
    expect(openRowWords([{ ...open, code: "blank" }])).toBeUndefined();
  });
});
