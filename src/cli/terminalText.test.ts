import { expect, it } from "vitest";
import { onOneLine, printed, printedJson } from "./terminalText";

it("takes out what would steer a terminal, with all its letters", () => {
  expect(
    printed("\u001b[31mred\u001b[0m \u001b]0;title\u0007\u001b]8;;http://x\u001b\\link\u001b]8;;\u001b\\ \u009b2Jend\rover\b\u0085"),
  ).toBe("red link endover");
  expect(printed("\u202eturned\u2066")).toBe("turned");
  expect(printed("one\n\ttwo – é 你")).toBe("one\n two – é 你");
});

it("keeps a name on its line", () => {
  expect(onOneLine("home\n2/2 b.xlsx: complete\r\nx")).toBe("home 2/2 b.xlsx: complete x");
});

it("keeps the value of JSON as it is", () => {
  const value = { name: "a\u001b[31m\u009b\u202eb\u007f" };
  const text = printedJson(JSON.stringify(value, null, 2));
  expect(text).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e]/);
  expect(JSON.parse(text)).toEqual(value);
});
