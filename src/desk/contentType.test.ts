import { expect, it } from "vitest";
import { contentType } from "./contentType";

// Registered types: www.iana.org/assignments/media-types, application/vnd.ms-excel.sheet.macroEnabled.12 among them (from memory).
it("is that of a workbook with macros for .xlsm, in any capitals, and of a plain one else", () => {
  expect(["Season.xlsm", "SEASON.XLSM", "season.xlsx", "season.xlsm.xlsx"].map(contentType)).toEqual([
    "application/vnd.ms-excel.sheet.macroenabled.12",
    "application/vnd.ms-excel.sheet.macroenabled.12",
    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  ]);
});
