/** Pictures of the desk at three widths, in light, dark and forced colours, over the demo season: part of `npm run pictures`. */
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { serveFiles, startBrowser } from "../support/browser";

const folder = join("docs", "pictures", "desk");
mkdirSync(folder, { recursive: true });

const server = await serveFiles({ "/": "dist" });
const browser = await startBrowser();
const looks = [
  ["light", { colorScheme: "light" }],
  ["dark", { colorScheme: "dark" }],
  ["forced", { forcedColors: "active" }],
] as const;
for (const [name, look] of looks) {
  for (const [width, height] of [
    [320, 640],
    [800, 700],
    [1280, 800],
  ] as const) {
    const page = await browser.newPage({ viewport: { width, height }, ...look });
    await page.clock.setFixedTime(new Date("2026-06-15T12:00:00"));
    await page.goto(`${server.origin}/`);
    await page.locator("#pane .pn-figure").first().waitFor({ state: "attached" });
    await page.locator(".sheet .column-name", { hasText: "Item" }).waitFor();
    await page.screenshot({ path: join(folder, `${name}-${width}.png`) });
    await page.close();
  }
}
await browser.close();
await server.close();
