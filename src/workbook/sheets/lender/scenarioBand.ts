/** Low, expected and high of each crop, of the grower's own figures. */
import type { CropFigures } from "../../../core/figures";
import { worseYears } from "../../../core/cautions";
import { insurancePayment, type Policy } from "../../../core/lender/guarantee";
import { scenarios } from "../../../core/lender/scenarios";
import type { SeasonReport } from "../../seasonReport";
import { moneyCell, note, text, yieldCell } from "../cells";
import { areaName } from "../sheetWords";
import { blockWidth, type LenderPage } from "./printedPage";

export function scenarioBand(page: LenderPage, report: SeasonReport, crops: readonly CropFigures[]): void {
  const top = page.next + 1;
  const area = areaName(report);
  const labels = [
    "Low, expected, high of your own figures",
    `Yield per ${area}`,
    "Price",
    `Income per ${area}`,
    `Net return per ${area}, operating`,
    `Net return per ${area}, full`,
    `Net return per ${area}, cash need`,
    `Insurance payment per ${area}, not in the net`,
    "   valued at",
  ];
  labels.forEach((words, index) => {
    page.put({ row: top + index, column: 0 }, text(words, index === 0 ? { bold: true, fill: "heading" } : {}));
  });
  crops.forEach((figures, index) => {
    const crop = report.season.crops.find((each) => each.name === figures.crop)!;
    const policy = report.season.insurance?.find((each) => each.crop === figures.crop) ?? null;
    const column = 1 + index * blockWidth;
    page.across({ row: top - 1, column }, blockWidth, text(figures.crop, { bold: true, align: "center" }));
    page.put({ row: top, column }, text("", { fill: "heading" }));
    scenarios(figures, crop, policy).forEach((year, offset) => {
      const spot = (row: number) => ({ row: top + row, column: column + 1 + offset });
      page.put(spot(0), text(year.name, { bold: true, fill: "heading", align: "right" }));
      page.put(spot(1), yieldCell(year.yield));
      page.put(spot(2), moneyCell(year.price));
      page.put(spot(3), moneyCell(year.incomePerArea));
      page.put(spot(4), moneyCell(year.netPerArea.operating));
      page.put(spot(5), moneyCell(year.netPerArea.full));
      page.put(spot(6), moneyCell(year.netPerArea.cashNeed, { bold: true }));
      page.put(spot(7), moneyCell(year.insurance?.perArea ?? null));
    });
    page.across({ row: top + 8, column }, blockWidth, text(valuedAt(policy), { align: "right" }));
  });
  page.put({ row: top + 9, column: 0 }, ...note(worseYears));
}

/** The price that an insurance payment is worked out at: the policy's own, never the farm's. */
function valuedAt(policy: Policy | null): string {
  if (policy === null) return "no policy entered";
  const { price, priceOf } = insurancePayment(policy, policy.approvedYield);
  return priceOf === "harvest price"
    ? `its harvest price ${price.toFixed(2)}`
    : `its projected price ${price.toFixed(2)}, no harvest price`;
}
