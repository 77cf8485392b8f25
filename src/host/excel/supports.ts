/** Whether this Excel has at least a version of the requirement set ExcelApi, such as `1.9`. */
export type Supports = (version: string) => boolean;

export const excelSupports: Supports = (version) => Office.context.requirements.isSetSupported("ExcelApi", version);
