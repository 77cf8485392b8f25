/** Figures, changes, result sheets and lender pages of a season rest on the same accounts, which are worked out once. */
import { beforeEach, expect, it, vi } from "vitest";
import { cashFlowSheet } from "../../src/workbook/sheets/lender/cashFlowSheet";
import { lenderPages } from "../../src/workbook/sheets/lender/lenderPages";
import { resultSheets } from "../../src/workbook/sheets/resultSheets";
import { reportJson } from "../../src/workbook/reportJson";
import { demo } from "../support/demoReport";

const built = vi.hoisted(() => new Map<string, number>());
const counting = vi.hoisted(() => (module: Record<string, unknown>, ...names: readonly string[]) => ({
  ...module,
  ...Object.fromEntries(
    names.map((name) => [
      name,
      (...of: readonly unknown[]) => {
        built.set(name, (built.get(name) ?? 0) + 1);
        return (module[name] as (...of: readonly unknown[]) => unknown)(...of);
      },
    ]),
  ),
}));

vi.mock("../../src/core/fieldFacts", async (module) => counting(await module(), "fieldFacts"));
vi.mock("../../src/core/seasonWork", async (module) => counting(await module(), "seasonWork"));
vi.mock("../../src/core/itemCosts", async (module) => counting(await module(), "itemBooks"));
vi.mock("../../src/core/seasonMachineCosts", async (module) => counting(await module(), "seasonMachineCosts"));
vi.mock("../../src/core/stand/fieldOutlook", async (module) => counting(await module(), "fieldOutlooks"));
vi.mock("../../src/core/loanCosts", async (module) => counting(await module(), "loanYears"));
vi.mock("../../src/core/weather/fieldWeather", async (module) => counting(await module(), "fieldWeather"));

beforeEach(() => {
  built.clear();
});

it("of the demo each is built once, whatever is asked of its report", async () => {
  const { report } = await demo();
  resultSheets(report);
  lenderPages(report, { date: "2031-06-15" });
  cashFlowSheet(report);
  reportJson(report);
  expect(Object.fromEntries(built)).toEqual({
    fieldOutlooks: 1,
    fieldFacts: 1,
    seasonWork: 1,
    itemBooks: 1,
    seasonMachineCosts: 1,
    loanYears: 1,
    fieldWeather: 1,
  });
});
