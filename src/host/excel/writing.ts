/** All that writes into an Excel workbook, in one part of the program: it comes after the pane has shown its first figure. */
export { addColumn } from "./addColumn";
export { addRows } from "./addRows";
export { changeCells } from "./changeCells";
export { enterRows } from "./enterRows";
export { growTable, takeBackGrowth } from "./growTable";
export { makeTables } from "./makeExcelTables";
export { takeBackCells, takeBackRows } from "./takeBack";
export { takeBackEntered } from "./takeBackTables";
export { writeSheets } from "./writeSheets";
