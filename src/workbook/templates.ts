/** The input tables that we offer to make, as their columns are declared. */
import { declaredTables } from "./columns/all";
import type { Declared } from "./columns/column";
import type { InputTable } from "./inputTable";

const narrowest = 12;

const tableOf = ({ table: sheet, columns }: Declared): InputTable => ({
  name: sheet.replaceAll(" ", "_"),
  sheet,
  columns: Object.values(columns)
    .filter(({ offered }) => offered !== false)
    .map(({ heading, hint, required = false, width, numberFormat, choices, words = [], was }) => ({
      heading,
      hint,
      required,
      words,
      width: width ?? Math.max(narrowest, heading.length + 2),
      ...(numberFormat === undefined ? {} : { numberFormat }),
      ...(choices === undefined ? {} : { choices }),
      ...(was === undefined ? {} : { was }),
    })),
});

/** All tables that we make, in the order of a season's work; `Matches` is made when a range is matched. */
export const inputTables: readonly InputTable[] = declaredTables.map(tableOf);
