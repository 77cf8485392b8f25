/** The input tables that we offer to make: headings, hints with their units, words to choose from. */
import { tableNames } from "./tableNames";
import type { InputColumn, InputTable } from "./inputTable";
import type { Declared } from "./columns/column";
import { budgetColumns } from "./columns/budget";
import { changeColumns } from "./columns/changes";
import { cropColumns } from "./columns/crops";
import { harvestColumns } from "./columns/harvest";
import { planterCheckColumns } from "./columns/planterChecks";
import { purchaseColumns } from "./columns/purchases";
import { seasonColumns } from "./columns/season";
import { standCountColumns } from "./columns/standCounts";
import { hybridColumns, weatherColumns } from "./columns/weather";
import { weedColumns } from "./columns/weeds";
import { applicationColumns } from "./columns/applications";
import { operationColumns } from "./columns/operations";
import { itemColumns } from "./columns/items";
import { otherCostColumns } from "./columns/otherCosts";
import { fieldColumns } from "./columns/fields";
import { machineColumns } from "./columns/machines";
import { loanColumns } from "./columns/loans";
import { insuranceColumns } from "./columns/insurance";
import { saleColumns } from "./columns/sales";


type Look = Partial<Pick<InputColumn, "numberFormat" | "choices" | "width">>;

const column = (required: boolean) => (heading: string, hint: string, look: Look = {}): InputColumn =>
  ({ heading, hint, required, width: Math.max(12, heading.length + 2), ...look });
const must = column(true);

const table = (sheet: string, ...columns: readonly InputColumn[]): InputTable => ({ name: sheet.replaceAll(" ", "_"), sheet, columns });

/** A table whose columns are declared. */
const tableOf = ({ table: sheet, columns }: Declared): InputTable => ({
  name: sheet.replaceAll(" ", "_"), sheet,
  columns: Object.values(columns).filter(({ offered }) => offered !== false).map(({ heading, hint, required = false, width, numberFormat, choices, words = [], was }) => ({
    heading, hint, required, words, width: width ?? Math.max(12, heading.length + 2),
    ...(numberFormat === undefined ? {} : { numberFormat }), ...(choices === undefined ? {} : { choices }), ...(was === undefined ? {} : { was }),
  })),
});

const seasonTable = tableOf(seasonColumns);

const cropsTable = tableOf(cropColumns);

const purchasesTable = tableOf(purchaseColumns);

const matchesTable = table("Matches",
  must("Table", "The table of ours that the range stands for.", { choices: tableNames, width: 18 }),
  must("Range", "The range with its headings, such as Invoices!A1:F200, or the name of a table of your own.", { width: 30 }),
  must("Column", "Our heading.", { width: 24 }),
  must("Heading", "The heading in the range.", { width: 24 }));

/** All tables that we make, in the order of a season's work; `Matches` is made when a range is matched. */
export const inputTables: readonly InputTable[] = [
  seasonTable, cropsTable, tableOf(fieldColumns), tableOf(budgetColumns), tableOf(itemColumns), purchasesTable, tableOf(applicationColumns), tableOf(operationColumns), tableOf(machineColumns), tableOf(otherCostColumns),
  tableOf(loanColumns), tableOf(insuranceColumns), tableOf(standCountColumns), tableOf(weatherColumns), tableOf(hybridColumns), tableOf(weedColumns), tableOf(planterCheckColumns), tableOf(saleColumns), tableOf(harvestColumns), tableOf(changeColumns), matchesTable,
];
