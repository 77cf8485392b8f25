import { expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { seasonReport } from "../report";

const codes = (crop: string, variety: string) =>
  seasonReport(
    contentFromText(`
Crops
| Crop | Yield unit | Expected price |
| Corn | bu | 4 |
| Soybeans | bu | 11 |
Fields
| Field | Crop | Acres | Yield goal | Hybrid or variety |
| Alder | Corn | 100 | 200 | ${variety} |
| Birch | Soybeans | 100 | 60 | |
Other costs
| Item | Kind | Amount | Basis |
| Rent | cash rent | 250 | per acre |
Hybrids
| Hybrid | Crop | Price per bag | Seeds per bag |
| Oak 1 | ${crop} | 290 | 80000 |
`),
  ).problems.map(({ code, at, found }) => [code, at.table, at.row, at.column, found]);

it("a hybrid that grows nowhere yet, on a farm of two crops, needs its crop: its price would count nowhere", () => {
  expect(codes("", "")).toEqual([["hybrid-crop-missing", "Hybrids", 1, "Crop", "Oak 1"]]);
  expect([codes("Corn", ""), codes("", "Oak 1")]).toEqual([[], []]);
});
