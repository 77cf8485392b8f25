/** What of the product is timed, in one module, so that it can be built as the pane's program is before it runs. */
export { newWorkbook, openWorkbook } from "../../src/host/embedded";
export { toFix } from "../../src/workbook/problem";
export { ReadingMemory } from "../../src/core/readingMemory";
export { seasonReport } from "../../src/workbook/report";
export { reportJson } from "../../src/workbook/reportJson";
export { inputTables } from "../../src/workbook/templates";
