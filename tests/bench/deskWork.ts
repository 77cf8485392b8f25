/** What a person does on the desk, timed in its page. */
import type { Page } from "playwright-core";
import type { WorkbookContent } from "../../src/workbook/cell";
import { cell, showSheet } from "../browser/deskPage";
import { percentile } from "./measured";

/**
 * Milliseconds. `processor`: of the page's main thread; `longest`: the longest task that kept the page from answering; `plain`: a
 * plain loop over the same cells there, 0 where none was run.
 */
export type EditMeasured = {
  readonly what: string;
  readonly edits: number;
  readonly p50: number;
  readonly p95: number;
  readonly processor: number;
  readonly longest: number;
  readonly plain: number;
};
/** Where the farm's one figure stands. */
export const main = "#pane .pn-farm-main";

/** Milliseconds that the page's main thread has worked so far. */
async function busyOf(page: Page): Promise<() => Promise<number>> {
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  return async () => (await session.send("Performance.getMetrics")).metrics.find(({ name }) => name === "TaskDuration")!.value * 1000;
}

/** How long the longest task was that kept the page from answering since a time; 0 where each was shorter than 50 ms. */
const longestSince = (page: Page, start: number): Promise<number> =>
  page.evaluate((from) => {
    const { tasks } = window as unknown as { readonly tasks: readonly { readonly start: number; readonly duration: number }[] };
    return Math.max(0, ...tasks.filter((task) => task.start >= from - 20).map(({ duration }) => duration));
  }, start);

/** Types another amount into a purchase, so often, and waits each time until the farm's figure has changed and is painted. */
export async function edited(page: Page, what: string, edits: number, content?: Pick<WorkbookContent, "tables">): Promise<EditMeasured> {
  const busy = await busyOf(page);
  await showSheet(page, "Purchases");
  await page.keyboard.press("Control+Home");
  const price = await page
    .locator(".sheet .column-name")
    .evaluateAll((names) => names.findIndex((each) => /^Unit price/.test(each.textContent)));
  await cell(page, `${String.fromCharCode(65 + price)}2`).click();
  const [clocks, processor, longest]: [number[], number[], number[]] = [[], [], []];
  for (let edit = 0; edit < edits + 3; edit += 1) {
    await page.keyboard.type(String(100_000 + 50_000 * (edit % 7)));
    await page.waitForTimeout(300);
    const [before, told] = [await busy(), watchEdit(page)];
    await told.ready;
    await page.keyboard.press("Enter");
    const { start, clock } = await told.changed;
    await page.waitForTimeout(300);
    const task = await longestSince(page, start);
    // The first entries warm the program up.
    if (edit >= 3) {
      clocks.push(clock);
      processor.push((await busy()) - before);
      longest.push(task);
    }
    await page.keyboard.press("ArrowUp");
  }
  const plain = content === undefined ? 0 : await plainIn(page, content);
  return {
    what,
    edits,
    p50: percentile(clocks, 50),
    p95: percentile(clocks, 95),
    processor: Math.min(...processor),
    longest: Math.max(...longest),
    plain,
  };
}

/** Times from the next Enter until the farm's figure says something else and the frame is painted. */
function watchEdit(page: Page): { readonly ready: Promise<void>; readonly changed: Promise<{ start: number; clock: number }> } {
  const ready = page.evaluate((figure) => {
    const words = () => document.querySelector(figure)?.textContent;
    const told = new Promise((resolve) => {
      window.addEventListener(
        "keydown",
        () => {
          const [start, before] = [performance.now(), words()];
          const look = () => {
            if (words() === before) return void requestAnimationFrame(look);
            requestAnimationFrame(() => setTimeout(() => resolve({ start, clock: performance.now() - start })));
          };
          requestAnimationFrame(look);
        },
        { once: true, capture: true },
      );
    });
    Object.assign(window, { told });
  }, main);
  return {
    ready,
    changed: ready.then(() => page.evaluate(() => (window as unknown as { told: Promise<{ start: number; clock: number }> }).told)),
  };
}

/** The least time of a plain loop over the same cells in the same page. */
const plainIn = (page: Page, { tables }: Pick<WorkbookContent, "tables">): Promise<number> =>
  page.evaluate(
    // The page's own policy lets no program be made of text, so the loop of plainLoop.ts stands here again.
    (content) => {
      let least = Infinity;
      for (let run = 0; run < 10; run += 1) {
        const start = performance.now();
        const totals = new Map<string, number>();
        for (const { rows } of content.tables) {
          for (const row of rows) {
            let name = "";
            let product = 1;
            for (const each of row) {
              if (typeof each === "number") product *= each;
              else if (name === "" && typeof each === "string") name = each;
            }
            totals.set(name, (totals.get(name) ?? 0) + product);
          }
        }
        least = Math.min(least, performance.now() - start);
      }
      return least;
    },
    { tables: tables.map(({ rows }) => ({ rows })) },
  );

/** Hands a file to the page; until another figure stands there. */
export async function opened(
  page: Page,
  bytes: Uint8Array,
): Promise<{ readonly clock: number; readonly processor: number; readonly longest: number }> {
  const busy = await busyOf(page);
  const before = await busy();
  const told = await page.evaluateHandle((figure) => {
    const words = () => document.querySelector(figure)?.textContent;
    const was = words();
    return {
      done: new Promise<{ start: number; clock: number }>((resolve) => {
        document.querySelector('input[type="file"]')!.addEventListener(
          "change",
          () => {
            const start = performance.now();
            const look = () => {
              const now = words();
              // Of a file that takes seconds it asks first.
              for (const button of document.querySelectorAll("button")) if (button.textContent === "Open it") button.click();
              if (now === undefined || now === was) return void requestAnimationFrame(look);
              resolve({ start, clock: performance.now() - start });
            };
            look();
          },
          { capture: true, once: true },
        );
      }),
    };
  }, main);
  await page
    .locator('input[type="file"]')
    .first()
    .setInputFiles({
      name: "season.xlsx",
      mimeType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
      buffer: Buffer.from(bytes),
    });
  const { start, clock } = await told.evaluate(({ done }) => done);
  const processor = (await busy()) - before;
  await page.waitForTimeout(500);
  const longest = await longestSince(page, start);
  return { clock, processor, longest };
}

/** Turns the wheel through a long table as fast as a hand does; the longest task meanwhile. */
export async function scrolled(page: Page): Promise<number> {
  await showSheet(page, "Purchases");
  await page.locator(".sheet").hover();
  const from = await page.evaluate(() => performance.now());
  for (let turn = 0; turn < 120; turn += 1) await page.mouse.wheel(0, turn % 10 === 9 ? 20_000 : 900);
  await page.waitForTimeout(500);
  return longestSince(page, from);
}
