import { expect, it } from "vitest";
import { Damaged } from "../package/fault";
import { richText, scanSharedStrings } from "./sharedStrings";

const sst = (items: string): string => `<sst xmlns="x">${items}</sst>`;

it("reads plain and rich texts, and leaves phonetic guides out", () => {
  const items =
    '<si><t>Corn</t></si><si/><si><r><t>Field </t></r><r><t xml:space="preserve"> one</t></r></si>' +
    '<si><t>読</t><rPh sb="0" eb="1"><t>よ</t></rPh><t>む</t><rPh sb="1" eb="2"><t>ム</t></rPh><phoneticPr fontId="1"/></si>';
  expect(scanSharedStrings(sst(items))).toEqual(["Corn", "", "Field  one", "読む"]);
});

it.each([
  ["text", "<si><t>Corn</t>"],
  ["mark", "<si><t>Corn</t></si><si"],
  ["text after good ones", `${"<si><t>Corn</t></si>".repeat(3)}<si><t>`],
  ["phonetic run", '<si><t>Corn</t><rPh sb="0" eb="1"><t>x</t></si>'],
])("refuses a %s without an end", (_, items) => {
  expect(() => scanSharedStrings(`<sst>${items}`)).toThrow(Damaged);
});

it("takes time by the length of a text without ends, and not by its square", () => {
  expect(() => scanSharedStrings(sst(`<si>${"<rPh >".repeat(300_000)}</si>`))).toThrow(Damaged);
  expect(richText("<rPh >".repeat(300_000), "")).toBe("");
  expect(richText("<t>".repeat(300_000), "").length).toBe(3 * 299_999);
  expect(richText("<t ".repeat(300_000), "")).toBe("");
});

it("loses no word of a text of one cell whose phonetic run has no end", () => {
  expect(richText("<t>Corn</t><rPh ><t>Beans</t>", "")).toBe("CornBeans");
});
