import { afterEach, describe, expect, it, vi } from "vitest";
import { startInExcel } from "./start";

/** An Office of which only what starting needs is there. */
function office(host: string | null, excelApi: number, background?: string): void {
  vi.stubGlobal("Office", {
    HostType: { Excel: "Excel" },
    onReady: async () => ({ host, platform: host && "PC" }),
    context: {
      displayLanguage: "en-US",
      document: { url: "https://farm.invalid/season.xlsx" },
      ...(background && { officeTheme: { bodyBackgroundColor: background } }),
      requirements: { isSetSupported: (_set: string, version: string) => Number(version) <= excelApi },
    },
  });
}

afterEach(() => vi.unstubAllGlobals());

const unheard = () => {
  throw new Error("Excel answered, and silence was told.");
};

afterEach(() => vi.useRealTimers());

describe("an Excel that is silent", () => {
  it("is told after ten seconds, once, and waited for all the same", async () => {
    vi.useFakeTimers();
    office("Excel", 1.9);
    let answer: (found: { host: string }) => void = unheard;
    vi.stubGlobal("Office", {
      ...Office,
      onReady: () =>
        new Promise((found) => {
          answer = found;
        }),
    });
    const told: string[] = [];
    const started = startInExcel((message) => told.push(message));
    await vi.advanceTimersByTimeAsync(9_999);
    expect(told).toEqual([]);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(told).toEqual([expect.stringMatching(/^Excel has not answered for ten seconds\..*Nothing in the workbook has been changed/)]);
    answer({ host: "Excel" });
    expect(await started).toMatchObject({ ok: true });
  });

  it("is not told where Excel answers in time, nor where its answer is a fault", async () => {
    vi.useFakeTimers();
    office("Excel", 1.9);
    expect(await startInExcel(unheard)).toMatchObject({ ok: true });
    vi.stubGlobal("Office", { ...Office, onReady: () => Promise.reject(new Error("gone")) });
    await expect(startInExcel(unheard)).rejects.toThrow("gone");
    await vi.advanceTimersByTimeAsync(60_000);
    expect(vi.getTimerCount()).toBe(0);
  });
});

describe("startInExcel", () => {
  it("gives the host, the language and how Office looks", async () => {
    office("Excel", 1.9, "#262626");
    expect(await startInExcel(unheard)).toMatchObject({
      ok: true,
      language: "en-US",
      look: { dark: true },
      host: { read: expect.any(Function) as unknown },
    });
    office("Excel", 1.7, "#F0F0F0");
    expect(await startInExcel(unheard)).toMatchObject({ ok: true, look: { dark: false } });
    office("Excel", 1.7);
    expect(await startInExcel(unheard)).toMatchObject({ ok: true, look: null });
  });

  it("says what is missing: Office.js, Excel, or a newer Excel", async () => {
    expect(await startInExcel(unheard)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/Office\.js could not be loaded/) as string,
    });
    office(null, 1.9);
    expect(await startInExcel(unheard)).toMatchObject({ ok: false, message: expect.stringMatching(/ribbon in Excel/) as string });
    office("Word", 1.9);
    expect(await startInExcel(unheard)).toMatchObject({ ok: false });
    office("Excel", 1.6);
    expect(await startInExcel(unheard)).toMatchObject({ ok: false, message: expect.stringMatching(/too old.*1\.7/) as string });
  });
});
