/** Types of workbook files: a phone gives a file the ending of its type, and Excel opens macros only under theirs. */
const types = {
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  ".xlsm": "application/vnd.ms-excel.sheet.macroenabled.12",
} as const;

/** The files that a picker offers, by type and ending. */
export const acceptedTypes: Readonly<Record<string, readonly string[]>> = { [types[".xlsx"]]: [".xlsx"], [types[".xlsm"]]: [".xlsm"] };

/** The type of a workbook file, by its ending. */
export const contentType = (name: string): string => (/\.xlsm$/i.test(name) ? types[".xlsm"] : types[".xlsx"]);
