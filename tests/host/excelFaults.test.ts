/** Every request of every command refused, cut, lost, delayed, garbled or repeated: what the workbook holds then, and what is said. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import { writing as whatWrites } from "../../src/host/excel/writingPart";
import { HostError, type HostState } from "../../src/host/workbookHost";
import { failureOf, failureWords } from "../../src/pane/failure";
import { everythingIn } from "../support/officeBridge/everything";
import { writes } from "../support/officeBridge/bridge";
import type { Fault } from "../support/officeBridge/faults";
import { openExcel } from "../support/officeBridge/openExcel";
import { settled } from "../support/officeBridge/settled";
import { faultCases, type FaultCase } from "./excelFaults";

// As in a pane that has shown its figures: it would come by a clock that is stopped below.
beforeAll(async () => void (await whatWrites()));
beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const open = async ({ workbook, before }: FaultCase) => {
  const opened = openExcel(workbook, { seconds: 30, quiet: 100 });
  opened.bridge.canUndo = false;
  if (before !== undefined) await settled(before(opened.host, opened));
  opened.bridge.requests = 0;
  opened.bridge.trips.length = 0;
  let state: HostState | undefined;
  opened.host.follow!((told) => {
    state = told;
  });
  return { ...opened, now: () => JSON.stringify(everythingIn(opened.workbook)), state: () => state! };
};

/** A command without a fault: what the workbook holds before and after, and the requests with their actions. */
async function undisturbed(faultCase: FaultCase) {
  const opened = await open(faultCase);
  const before = opened.now();
  expect(await settled(faultCase.does(opened.host))).toMatchObject({ ok: true });
  const after = opened.now();
  return {
    before,
    after,
    requests: opened.bridge.trips.map(({ actions, flags }) => ({ actions, isWriting: before !== after && (flags & writes) !== 0 })),
  };
}

type Came = { readonly of: string; readonly fault: string; readonly told: string; readonly holds: string; readonly then: string };

/** One fault in one request of a command, and one try more without it where the command failed. */
async function disturbed(
  faultCase: FaultCase,
  { before, after }: Awaited<ReturnType<typeof undisturbed>>,
  request: number,
  fault: Fault,
): Promise<Omit<Came, "of" | "fault">> {
  const opened = await open(faultCase);
  opened.bridge.faultOf = (at) => (at === request ? fault : null);
  const result = await settled(faultCase.does(opened.host));
  expect(result).not.toBeNull();
  const isReading = before === after;
  const now = opened.now();
  const holds = isReading ? "as it was" : now === after ? "all of it" : now === before ? "nothing of it" : "a part of it";
  expect(opened.state().waiting).toBeNull();
  if (result!.ok) {
    expect(opened.now()).toEqual(after);
    return { told: "as without the fault", holds, then: "" };
  }
  const error = result!.error as HostError;
  expect(error).toBeInstanceOf(HostError);
  const what = failureWords(failureOf(error));
  expect(what).not.toMatch(/undefined|null|\[object|JSON|TypeError|SyntaxError|Unexpected/);
  // What is said is so.
  expect({ request, fault, what, written: error.written, holds }).toEqual({
    request,
    fault,
    what,
    written: holds === "a part of it" ? "partly" : "no",
    holds: holds === "as it was" ? "as it was" : error.written === "partly" ? "a part of it" : "nothing of it",
  });
  if (fault.how === "late" && !isReading) {
    await vi.advanceTimersByTimeAsync(fault.milliseconds);
    // What comes later than anybody waited is told.
    const came = opened.now() !== before;
    expect(opened.state().late !== null).toBe(came);
    if (came) {
      expect(opened.now()).toEqual(after);
      return { told: what, holds, then: `it comes after all, and is told: ${opened.state().late}` };
    }
  }
  opened.bridge.faultOf = () => null;
  const again = await settled(faultCase.does(opened.host));
  expect(again!.ok ? "" : { request, fault, again: String((again!.error as Error).cause) }).toBe("");
  expect(opened.now()).toEqual(after);
  return { told: what, holds, then: "as without the fault" };
}

const wholeFaults: readonly (readonly [string, Fault])[] = [
  ["refused", { how: "refused", code: "GeneralException" }],
  ["request lost", { how: "lost request" }],
  ["answer lost", { how: "lost answer" }],
  ["carried out a minute late", { how: "late", milliseconds: 60_000 }],
  ["answered by a page", { how: "not JSON" }],
  ["answered by nothing", { how: "empty answer" }],
  ["answered with a fault of the way there", { how: "gateway fault" }],
  ["answered twice", { how: "answered twice" }],
];

const [writing, reading] = ["the request that writes", "a request that reads"];

async function allOf(faultCase: FaultCase): Promise<readonly Came[]> {
  const calm = await undisturbed(faultCase);
  const came: Came[] = [];
  for (const [request, { actions, isWriting }] of calm.requests.entries()) {
    const of = isWriting ? writing : reading;
    for (const [name, fault] of wholeFaults) came.push({ of, fault: name, ...(await disturbed(faultCase, calm, request, fault)) });
    for (let after = 0; after < actions; after += 1) {
      came.push({ of, fault: "cut", ...(await disturbed(faultCase, calm, request, { how: "cut", after })) });
    }
  }
  return came;
}

/** What came of one command, as lines of a table: the faults that came to the same, each with how many there were. */
function linesOf(command: string, came: readonly Came[]): readonly string[] {
  const same = new Map<string, { readonly each: Came; readonly faults: Map<string, number> }>();
  for (const { fault, ...each } of came) {
    const line = same.get(JSON.stringify(each)) ?? { each: { fault, ...each }, faults: new Map<string, number>() };
    same.set(JSON.stringify(each), line);
    line.faults.set(fault, (line.faults.get(fault) ?? 0) + 1);
  }
  return [...same.values()].map(({ each: { of, holds, told, then }, faults }) => {
    const which = [...faults].map(([fault, count]) => (count === 1 ? fault : `${fault} (${count})`)).join(", ");
    return `| ${[command, `${of}: ${which}`, holds, told, then].map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`;
  });
}

const lines = new Map<string, readonly string[]>();

describe.each(faultCases)("$command", (faultCase) => {
  it("says what is so, and is as if nothing had happened after one more try, whatever goes wrong", async () => {
    lines.set(faultCase.command, linesOf(faultCase.command, await allOf(faultCase)));
  }, 120_000);
});

const document = "docs/excel-faults.md";
const heading = `# What goes wrong in Excel, and what comes of it

Made by \`tests/host/excelFaults.test.ts\`, which fails where this page is not what it finds, and makes it anew with
\`npx vitest run --project unit tests/host/excelFaults.test.ts -u\`. Each request of each command is refused, lost, delayed, answered
by something that is no answer, answered twice, and cut after each of its actions; a number says in how many places. *Holds* is what the workbook holds of the
command's work when the command ends; *then* is what comes of trying once more, or of waiting. Microsoft's own Office.js talks to a workbook of
ours there; what no test can show is in the list for a real Excel in [excel.md](excel.md).

| command | fault | holds | told | then |
|---|---|---|---|---|
`;

it(`stands in ${document} as it came out`, () => {
  expect([...lines.keys()]).toEqual(faultCases.map(({ command }) => command));
  const text = heading + [...lines.values()].flat().join("\n") + "\n";
  const isRenewed =
    (expect.getState() as unknown as { snapshotState: { _updateSnapshot: string } }).snapshotState._updateSnapshot === "all";
  if (isRenewed) writeFileSync(document, text);
  expect(existsSync(document) ? readFileSync(document, "utf8") : "").toBe(text);
});
