import { Model as ImportedModel, type CellArrayStructure } from "@ironcalc/wasm";
import { lastRow } from "../../address";
import type { EngineAnswer, EngineRequest } from "./engine";
import { isCellError, type CalculatedValue } from "./formulaBook";

/**
 * Errors that say more of the engine than of the workbook: it does not know a function, cannot read the formula, or lets
 * several values spill where a formula in a file means the one of its own row.
 */
const engineErrors = new Set(["#NAME?", "#N/IMPL!", "#ERROR!", "#CIRC!", "#SPILL!"]);
/** Fifteen digits, which is what Excel keeps; the engine's usual format shows nine. */
const allDigits = "0.00000000000000E+00";
/** What `getCellType` answers. */
const types = { text: 2, logical: 4, error: 16 };

/**
 * Works a workbook out with IronCalc, which has been loaded before (`initSync` or `init` of its package). A program that broke down here
 * is not to be asked again: its memory is no longer what it thinks.
 *
 * @param Model of another instance of the program than the one imported here
 */
export function ironCalcAnswer({ sheets, constants, formulas }: EngineRequest, Model: typeof ImportedModel = ImportedModel): EngineAnswer {
  const model = new Model("workbook", "en", Intl.DateTimeFormat().resolvedOptions().timeZone, "en");
  model.pauseEvaluation();
  sheets.forEach((name, index) => {
    if (index > 0) model.newSheet();
    model.renameSheet(index, name);
  });
  for (const { sheet, row, column, value } of constants) model.setUserInput(sheet, row + 1, column + 1, asTyped(value));
  // A whole column takes its format in one go, and each cell of it takes it over.
  for (const key of new Set(formulas.map(({ sheet, column }) => `${sheet}/${column}`))) {
    const [sheet, column] = key.split("/").map(Number) as [number, number];
    model.updateRangeStyle({ sheet, row: 1, column: column + 1, width: 1, height: lastRow + 1 }, "num_fmt", allDigits);
  }
  for (const { sheet, row, column, formula } of formulas) model.setUserInput(sheet, row + 1, column + 1, `=${formula}`);
  model.resumeEvaluation();
  model.evaluate();
  const answer = formulas.map(({ sheet, row, column }) => valueIn(model, sheet, row + 1, column + 1));
  model.free();
  return answer;
}

function asTyped(value: CalculatedValue): string {
  if (isCellError(value)) return value.error;
  if (typeof value === "string") return `'${value}`;
  return typeof value === "boolean" ? (value ? "TRUE" : "FALSE") : String(value);
}

function valueIn(model: ImportedModel, sheet: number, row: number, column: number): CalculatedValue | null {
  if (fillsMore(model.getCellArrayStructure(sheet, row, column))) return null;
  const shown = model.getFormattedCellValue(sheet, row, column);
  switch (model.getCellType(sheet, row, column)) {
    case types.text:
      return shown;
    case types.logical:
      return shown === "TRUE";
    case types.error:
      return engineErrors.has(shown) ? null : { error: shown };
    default:
      return number(shown) ?? number(shownWithAllDigits(model, sheet, row, column));
  }
}

/** Whether a formula fills other cells than its own, or is filled from elsewhere. */
function fillsMore(structure: CellArrayStructure): boolean {
  if (structure === "SingleCell") return false;
  if (!("DynamicAnchor" in structure)) return true;
  return structure.DynamicAnchor.some((extent) => extent !== 1);
}

/** Powers of three digits are shown wrongly, and no season has any. */
const number = (shown: string): number | null => (/^-?\d\.\d+E[+-]\d\d$/.test(shown) ? Number(shown) : null);

/** A formula such as `TODAY()` brings a format of its own, over that of its column. */
function shownWithAllDigits(model: ImportedModel, sheet: number, row: number, column: number): string {
  model.updateRangeStyle({ sheet, row, column, width: 1, height: 1 }, "num_fmt", allDigits);
  return model.getFormattedCellValue(sheet, row, column);
}
