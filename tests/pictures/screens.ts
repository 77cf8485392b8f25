/**
 * Pictures of the desk and of the pane's pages for the documentation, from the demo season as `npm run build` serves it: `npm run
 * pictures`.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { serveFiles, startBrowser } from "../support/browser";

const folder = join("docs", "pictures");
if (!existsSync("dist/index.html")) throw new Error("There is no build to show. Run: npm run build");

const server = await serveFiles({ "/": "dist" });
const browser = await startBrowser();
const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
const pane = page.locator("#pane");
/** The day of the demo's season, so that what is shown of today is the same at each taking. */
await page.clock.setFixedTime(new Date("2026-06-15T12:00:00"));

async function openDemo(): Promise<void> {
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto(`${server.origin}/`);
  await pane.locator(".pn-figure").first().waitFor();
}
const showPage = (name: string | RegExp) => pane.getByRole("tab", { name }).click();
const open = (name: string | RegExp) => pane.getByRole("button", { name }).first().click();
async function fill(values: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, value] of Object.entries(values)) await pane.getByRole("textbox", { name: label, exact: true }).fill(value);
}

/** The pane by itself, at most so high and else as high as what it shows. */
async function takePane(name: string, most = 4000): Promise<void> {
  await page.waitForTimeout(400);
  const beside = await pane.evaluate((element) => window.innerHeight - element.clientHeight);
  await page.setViewportSize({ width: 1280, height: 300 });
  const inside = await pane.evaluate((element) => element.scrollHeight);
  await page.setViewportSize({ width: 1280, height: Math.min(most, inside + beside) });
  await page.waitForTimeout(400);
  await pane.evaluate((element) => element.scrollTo(0, 0));
  await pane.screenshot({ path: join(folder, `${name}.png`) });
}

await openDemo();
await page.locator(".rail button", { hasText: "Purchases" }).click();
await page.locator(".sheet .column-name", { hasText: "Unit price" }).waitFor();
await page.screenshot({ path: join(folder, "desk.png") });
await takePane("pane-season", 1500);

await openDemo();
await showPage("Fields");
await takePane("pane-fields");
await open(/^Old Orchard North/);
for (const name of ["Uneven stand", "Compare keeping with replanting", "Estimate the insurance payment"]) await open(name);
for (const [label, value] of [
  ["Loss, % of yield", "4"],
  ["Proven yield (APH)", "196"],
  ["Coverage", "75"],
  ["Appraised yield", "90"],
  ["Policy's price", "4.60"],
] as const)
  await pane.getByLabel(label).fill(value);
await takePane("pane-stand");

await openDemo();
await showPage("Changes");
await open(/^Fewer soybean seeds/);
await open("The four quadrants");
await takePane("pane-change");

await openDemo();
await showPage("Changes");
await open("Compare another change");
await pane.getByLabel("What is compared").selectOption("Rebuild worn row units");
await fill({
  "Opener when new, in": "15",
  "Opener measured, in": "14.6",
  "Opener replaced at, in": "14.5",
  Rows: "16",
  "Rows rebuilt": "16",
  "Parts per row": "250",
  "Shop hours per row": "2",
  "Labor per hour": "25",
  "Years kept": "4",
  "Rows that plant badly": "4",
  "Yield that such a row loses, %": "6",
  "Interest a year, %": "6",
});
await takePane("pane-worn-row-units");

await openDemo();
await showPage("Lender");
await takePane("pane-lender");

await openDemo();
await page.setInputFiles("input[type=file]", "shared/demo-season-with-problems.xlsx");
await open(/to fix/);
await pane.locator(".pn-problems").first().waitFor();
await takePane("pane-problems", 640);
await browser.close();
await server.close();
