/** Pictures of the demo's printed pages for the documentation, as LibreOffice prints them: `npm run pictures`. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { resultSheets } from "../../src/workbook/sheets/resultSheets";
import { cashFlowSheet } from "../../src/workbook/sheets/lender/cashFlowSheet";
import { lenderPages } from "../../src/workbook/sheets/lender/lenderPages";
import { spelledSheet } from "../../src/workbook/spelling";
import { demo } from "../support/demoReport";
import { pagePicture, pageTexts, printed } from "../support/libreOffice";

const folder = join("docs", "pictures");
/** The day of the demo's season, so that the same pages give the same pictures. */
const date = "2026-06-15";
const dots = 90;

/** What stands on the first page that a picture shows. */
const pictures = [
  ["printed-cost", /^Cost per acre/],
  ["printed-break-even", /^Break-even\n/],
  ["lender-1", /Try your own price and yield/],
  ["lender-2", /Low, expected, high of your own figures/],
  ["cash-flow", /^Cash flow/],
  ["printed-stand", /^Stand\n/],
  ["printed-field", /^Fields, one by one\n[^]*Larkspur Bottom, Corn, 164\.2 ac/],
  ["printed-past-seasons", /^Past seasons by crop/],
  ["printed-change", /^Change – Fewer soybean seeds/],
] as const;

mkdirSync(folder, { recursive: true });
const { workbook, report } = await demo();
await workbook.write(
  [...resultSheets(report), lenderPages(report, { date }), cashFlowSheet(report)].map((sheet) => spelledSheet(sheet, report)),
);
printed(workbook.save(), (pdf) => {
  const pages = pageTexts(pdf).map((page) => page.trimStart());
  for (const [name, first] of pictures) {
    const index = pages.findIndex((page) => first.test(page));
    if (index < 0) throw new Error(`no printed page has what ${name} shows`);
    pagePicture(pdf, index + 1, dots, join(folder, `${name}.png`));
  }
});
