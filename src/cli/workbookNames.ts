/** Files that Excel keeps beside an open workbook begin so. */
export const isWorkbook = (name: string): boolean => /\.xls[xm]$/i.test(name) && !name.startsWith("~$");
