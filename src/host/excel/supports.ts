/** Whether this Excel has at least a version of the requirement set ExcelApi, such as `1.9`. */
export type Supports = (version: string) => boolean;

export const excelSupports: Supports = (version) => Office.context.requirements.isSetSupported("ExcelApi", version);

/** Whether Excel says that its own Undo takes back everything that an add-in does ("Undo capabilities with the Excel JavaScript API"). */
export const excelUndoes = (): boolean => Office.context.requirements.isSetSupported("ExcelUndoApiAll", "1.0");
