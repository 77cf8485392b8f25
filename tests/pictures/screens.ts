/**
 * Pictures of the desk and of the pages Season and Problems for the documentation, from the demo season as
 * `npm run build` serves it: `npm run pictures`.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { serveFiles, startBrowser } from "../support/browser";

const folder = join("docs", "pictures");
if (!existsSync("dist/index.html")) throw new Error("There is no build to show. Run: npm run build");

const server = await serveFiles({ "/": "dist" });
const browser = await startBrowser();
const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
await page.goto(`${server.origin}/`);
await page.locator("#pane .pn-figure").first().waitFor();
await page.getByRole("tablist", { name: "Sheets" }).getByRole("tab", { name: "Purchases", exact: true }).click();
await page.locator('.sheet [data-part="heading"]').first().waitFor();
await page.screenshot({ path: join(folder, "desk.png") });

// The page by itself: as high as what it shows.
const pane = page.locator("#pane");
await page.setViewportSize({ width: 1280, height: 1500 });
await page.waitForTimeout(400);
await pane.screenshot({ path: join(folder, "pane-season.png") });

await page.goto(`${server.origin}/`);
await page.locator("#pane .pn-figure").first().waitFor();
await page.setInputFiles("input[type=file]", "shared/demo-season-with-problems.xlsx");
await page.getByRole("tab", { name: /Problems/ }).click();
await page.locator("#pane .pn-problems").first().waitFor();
await page.setViewportSize({ width: 1280, height: 640 });
await page.waitForTimeout(400);
await pane.screenshot({ path: join(folder, "pane-problems.png") });
await browser.close();
await server.close();
