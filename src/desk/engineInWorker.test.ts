import { describe, expect, it } from "vitest";
import { handClock } from "../../tests/support/handClock";
import { newBook } from "./embeddedBook";
import { engineInWorker, longestSilence, type EngineWorker, type WorkerQuestion } from "./engineInWorker";

const question = { sheets: ["Notes"], constants: [], formulas: [] };

/** Workers that answer only when the test says so. */
function quietWorkers() {
  const started: (EngineWorker & { readonly asked: WorkerQuestion[]; isEnded: boolean })[] = [];
  const start = (): EngineWorker => {
    const asked: WorkerQuestion[] = [];
    const worker = {
      asked,
      isEnded: false,
      postMessage: (each: WorkerQuestion) => void asked.push(each),
      terminate: () => {
        worker.isEnded = true;
      },
      onmessage: null,
      onerror: null,
    };
    started.push(worker);
    return worker;
  };
  return { start, started };
}

/** The engine is asked a few promises later. */
async function untilAsked(workers: readonly { readonly asked: readonly unknown[] }[], number: number): Promise<void> {
  while ((workers[number - 1]?.asked.length ?? 0) === 0) await Promise.resolve();
}

describe("engineInWorker", () => {
  it("notices a worker that says nothing within five seconds, ends it and starts another with the next question", async () => {
    const { later, pass } = handClock();
    const { start, started } = quietWorkers();
    const engine = engineInWorker(start, later);
    const first = engine(question).catch((fault: Error) => fault.message);
    pass(longestSilence - 1);
    expect(started[0]?.isEnded).toBe(false);
    pass(1);
    expect(await first).toBe("the calculation engine gave no answer for five seconds");
    expect(started[0]?.isEnded).toBe(true);
    const second = engine(question);
    started[1]!.onmessage?.({ data: { id: started[1]!.asked[0]!.id, answer: [], fault: null } });
    expect(await second).toEqual([]);
  });

  it("waits on while the program is still on its way, and notices a worker that dies", async () => {
    const { later, pass } = handClock();
    const { start, started } = quietWorkers();
    const engine = engineInWorker(start, later);
    const answer = engine(question).catch((fault: Error) => fault.message);
    pass(4_000);
    started[0]!.onmessage?.({ data: { loading: true } });
    pass(4_000);
    expect(started[0]?.isEnded).toBe(false);
    started[0]!.onerror?.({ message: "out of memory" });
    expect(await answer).toBe("out of memory");
    expect(started[0]?.isEnded).toBe(true);
  });

  it("lets a workbook be saved while nothing is heard of it, marks what may be old, and asks again with the next entry", async () => {
    const { later, pass } = handClock();
    const { start, started } = quietWorkers();
    const book = newBook({ engine: engineInWorker(start, later), later });
    const at = (column: number) => ({ row: 0, column });
    book.enter("Notes", [
      { at: at(0), text: "12" },
      { at: at(1), text: "=A1*2" },
    ]);
    const saved = book.save();
    const read = book.host.read();
    await untilAsked(started, 1);
    pass(longestSilence);
    expect((await saved).bytes.length).toBeGreaterThan(100);
    await read;
    expect(book.engineFault()).toContain("no answer for five seconds");
    expect(book.cell("Notes", at(1)).isStale).toBe(true);
    expect((await book.save()).bytes.length).toBeGreaterThan(100);

    book.enter("Notes", [{ at: at(0), text: "13" }]);
    await untilAsked(started, 2);
    started[1]!.onmessage?.({ data: { id: started[1]!.asked[0]!.id, answer: [26], fault: null } });
    await book.host.read();
    expect(book.cell("Notes", at(1))).toMatchObject({ text: "26", isStale: false });
    expect(book.engineFault()).toBeNull();
  });
});
