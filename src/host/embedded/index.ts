/** The embedded workbook: over a real `.xlsx` file, without Excel. */
export { EmbeddedWorkbook, type Entry, type GridCell, type GridSheet, type GridTable, type Options } from "./embeddedWorkbook";
export type { WorkbookFault } from "./fault";
export { newWorkbook, openWorkbook } from "./open";
export type { Engine, EngineAnswer, EngineRequest } from "./recalculation/engine";
