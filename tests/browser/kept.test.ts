/** The desk loses nothing: crashes, full storage, refused downloads, other tabs and silent workers, in Chromium over the built page. */
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { beforeEach, describe, expect, it } from "vitest";
import { deskBrowser } from "../support/deskBrowser";
import { cell, showSheet } from "./deskPage";

const eventually = <Value>(look: () => Promise<Value>) => expect.poll(look, { timeout: 20_000, interval: 100 });
const workbook = "shared/demo-season.xlsx";

const desk = deskBrowser({ viewport: { width: 1280, height: 800 }, acceptDownloads: true });
let page: Page;
beforeEach(async () => {
  page = await opened();
});

async function opened(): Promise<Page> {
  const next = await desk.open();
  await next.locator(".sheet [data-active]").waitFor();
  return next;
}
const notices = (of = page) => of.locator(".notice-region").innerText();
const file = (of = page) => of.locator(".file").innerText();
/** Drafts in the browser's storage. */
const keptDrafts = (): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open("pennyacre", 1);
        opening.onerror = () => reject(opening.error!);
        opening.onsuccess = () => {
          const counted = opening.result.transaction("drafts").objectStore("drafts").count();
          counted.onsuccess = () => {
            opening.result.close();
            resolve(counted.result);
          };
          counted.onerror = () => {
            opening.result.close();
            reject(counted.error!);
          };
        };
      }),
  );

async function enterSupplies(text: string): Promise<void> {
  await showSheet(page, "Purchases");
  await page.keyboard.press("Control+Home");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

describe("a draft", () => {
  it("is kept after an entry, offered when the page ended without saving, and opens as unsaved", async () => {
    await enterSupplies("Wheat of ours");
    await eventually(() => file()).toContain("draft kept");
    await page.close({ runBeforeUnload: false });
    page = await opened();
    await eventually(() => notices()).toContain("Entries that no file has are kept in this browser");
    await page.getByRole("button", { name: "Open the draft of demo-season.xlsx" }).click();
    await eventually(() => file()).toContain("changes not saved");
    await showSheet(page, "Purchases");
    expect(await cell(page, "B2").innerText()).toContain("Wheat of ours");
    expect(await notices()).not.toContain("kept in this browser");
  });

  it("is offered after the tab's process was killed, with all that was entered", async () => {
    await enterSupplies("Rye of ours");
    await eventually(() => file()).toContain("draft kept");
    const session = await desk.context().newCDPSession(page);
    const killed = page.waitForEvent("crash");
    // The command is never answered: what would answer is gone.
    void session.send("Page.crash").catch(() => undefined);
    await killed;
    page = await opened();
    await eventually(() => notices()).toContain("Entries that no file has are kept in this browser");
    await page.getByRole("button", { name: "Open the draft of demo-season.xlsx" }).click();
    await showSheet(page, "Purchases");
    await eventually(() => cell(page, "B2").innerText()).toContain("Rye of ours");
  });

  it("is not offered while its workbook is open in another tab, several are kept, and each can be let go", async () => {
    await enterSupplies("First");
    await eventually(() => file()).toContain("draft kept");
    const first = page;
    page = await opened();
    await eventually(() => page.locator("#pane .pn-figure").count()).toBeGreaterThan(0);
    expect(await page.locator(".drafts").count()).toBe(0);
    await enterSupplies("Second");
    await eventually(() => file()).toContain("draft kept");
    await first.close();
    await page.close();
    page = await opened();
    await eventually(() => page.locator(".drafts li").count()).toBe(2);
    await page
      .getByRole("button", { name: /^Discard/ })
      .first()
      .click();
    await eventually(() => page.locator(".drafts li").count()).toBe(1);
    await page.reload();
    await eventually(() => page.locator(".drafts li").count()).toBe(1);
  });

  it("goes once nothing is unsaved any more", async () => {
    await enterSupplies("Passing");
    await eventually(() => file()).toContain("draft kept");
    await page.keyboard.press("Control+z");
    await eventually(() => file()).toBe("demo-season.xlsx");
    await eventually(keptDrafts).toBe(0);
    await page.reload();
    await page.locator("#pane .pn-figure").first().waitFor();
    expect(await page.locator(".drafts").count()).toBe(0);
  });

  it("that finds the storage full is told, and the workbook can still be saved", async () => {
    const devtools = await desk.context().newCDPSession(page);
    await devtools.send("Storage.overrideQuotaForOrigin", { origin: desk.origin(), quotaSize: 1 });
    await enterSupplies("No room");
    await eventually(() => notices()).toContain("No draft is kept in this browser: its storage is full.");
    await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save", exact: true }).click()]);
    await eventually(() => notices()).toContain("was handed to the browser's downloads");
    await devtools.send("Storage.overrideQuotaForOrigin", { origin: desk.origin() });
  });
});

describe("saving", () => {
  it("that the browser refuses is told, and the workbook stays unsaved", async () => {
    await enterSupplies("Refused");
    await page.evaluate(() => {
      URL.createObjectURL = () => {
        throw new Error("downloads are blocked");
      };
    });
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await eventually(() => notices()).toContain("demo-season.xlsx could not be saved: downloads are blocked.");
    expect(await file()).toContain("changes not saved");
  });

  it("to the downloads can be said not to have arrived", async () => {
    await enterSupplies("Gone");
    await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save", exact: true }).click()]);
    await eventually(() => file()).toBe("demo-season.xlsx");
    await page.getByRole("button", { name: "It did not arrive" }).click();
    await eventually(() => file()).toContain("changes not saved");
  });

  it("puts the workbook into the file that the browser handed over, and never over another's change", async () => {
    const bytes = [...readFileSync(workbook)];
    await page.evaluate(async (content) => {
      const folder = await navigator.storage.getDirectory();
      const handle = await folder.getFileHandle("placed.xlsx", { create: true });
      const stream = await handle.createWritable();
      await stream.write(new Uint8Array(content));
      await stream.close();
      Object.assign(window, { showOpenFilePicker: async () => [handle] });
    }, bytes);
    // The buttons look for the picker as they are drawn.
    await showSheet(page, "Season");
    await page.getByRole("button", { name: "Open…" }).click();
    await eventually(() => file()).toBe("placed.xlsx");
    await enterSupplies("In place");
    const size = () =>
      page.evaluate(
        async () => (await (await (await navigator.storage.getDirectory()).getFileHandle("placed.xlsx")).getFile()).lastModified,
      );
    const before = await size();
    await page.keyboard.press("Control+s");
    await eventually(() => notices()).toContain("placed.xlsx was saved in its place.");
    expect(await size()).not.toBe(before);
    expect(await file()).toBe("placed.xlsx");

    await page.evaluate(async () => {
      const stream = await (await (await navigator.storage.getDirectory()).getFileHandle("placed.xlsx")).createWritable();
      await stream.write("what somebody else has written");
      await stream.close();
    });
    await enterSupplies("Over theirs");
    await page.keyboard.press("Control+s");
    await eventually(() => notices()).toContain("another program or tab has changed the file");
    expect(await file()).toContain("changes not saved");
    await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save a copy" }).click()]);
  });
});

it("tells both tabs that have one file open", async () => {
  await page.setInputFiles("input[type=file]", workbook);
  await eventually(() => file()).toBe("demo-season.xlsx");
  await page.locator("#pane .pn-figure").first().waitFor();
  const other = await opened();
  await other.setInputFiles("input[type=file]", workbook);
  await eventually(() => notices(other)).toContain("is open in another tab, too");
  await eventually(() => notices()).toContain("is open in another tab, too");
});

it("notices within five seconds an engine that says nothing, marks what may be old, and saves", async () => {
  await page.addInitScript(() => {
    class Silent extends EventTarget {
      onmessage = null;
      onerror = null;
      postMessage() {}
      terminate() {}
    }
    Object.assign(window, { Worker: Silent });
  });
  await page.clock.install();
  await page.reload();
  await page.locator(".sheet [data-active]").waitFor();
  await showSheet(page, "About");
  await page.keyboard.press("Control+End");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.type("=2*21");
  await page.keyboard.press("Enter");
  await page.keyboard.press("ArrowUp");
  await page.clock.fastForward(5_000);
  await eventually(() => page.locator(".status").innerText()).toContain("the calculation engine gave no answer for five seconds");
  await eventually(() => page.locator(".sheet [data-active]").getAttribute("data-stale")).toBe("");
  await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save", exact: true }).click()]);
});
