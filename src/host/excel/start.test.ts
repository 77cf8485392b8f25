import { afterEach, describe, expect, it, vi } from "vitest";
import { startInExcel } from "./start";

/** An Office of which only what starting needs is there. */
function office(host: string | null, excelApi: number, background?: string): void {
  vi.stubGlobal("Office", {
    HostType: { Excel: "Excel" },
    onReady: async () => ({ host, platform: host && "PC" }),
    context: {
      displayLanguage: "en-US",
      ...(background && { officeTheme: { bodyBackgroundColor: background } }),
      requirements: { isSetSupported: (_set: string, version: string) => Number(version) <= excelApi },
    },
  });
}

afterEach(() => vi.unstubAllGlobals());

describe("startInExcel", () => {
  it("gives the host, the language and how Office looks", async () => {
    office("Excel", 1.9, "#262626");
    expect(await startInExcel()).toMatchObject({ ok: true, language: "en-US", look: { dark: true }, host: { read: expect.any(Function) as unknown } });
    office("Excel", 1.7, "#F0F0F0");
    expect(await startInExcel()).toMatchObject({ ok: true, look: { dark: false } });
    office("Excel", 1.7);
    expect(await startInExcel()).toMatchObject({ ok: true, look: null });
  });

  it("says what is missing: Office.js, Excel, or a newer Excel", async () => {
    expect(await startInExcel()).toMatchObject({ ok: false, message: expect.stringMatching(/Office\.js could not be loaded/) as string });
    office(null, 1.9);
    expect(await startInExcel()).toMatchObject({ ok: false, message: expect.stringMatching(/ribbon in Excel/) as string });
    office("Word", 1.9);
    expect(await startInExcel()).toMatchObject({ ok: false });
    office("Excel", 1.6);
    expect(await startInExcel()).toMatchObject({ ok: false, message: expect.stringMatching(/too old.*1\.7/) as string });
  });
});
