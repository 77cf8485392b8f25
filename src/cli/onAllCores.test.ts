import { describe, expect, it } from "vitest";
import { onAllCores } from "./onAllCores";

/** A program for threads: it doubles a number after so long as it says, and breaks down at some. */
const program = (source: string) =>
  new URL(`data:text/javascript,${encodeURIComponent(`import { parentPort } from "node:worker_threads"; ${source}`)}`);
const doubling = program(`
  parentPort.on("message", (job) => {
    if (job === 3) throw new Error("not three");
    if (job === 4) process.exit(0);
    parentPort.postMessage(2 * job);
  });`);
const words = (job: number, cause: unknown) => `${job}: ${cause instanceof Error ? cause.message : String(cause)}`;

describe("onAllCores", () => {
  it.each([1, 2, 5])("answers each job in its place with %d threads", async (threads) => {
    const jobs = Array.from({ length: 9 }, (_, index) => 10 + index);
    expect(await Promise.all(onAllCores<number, number | string>(doubling, threads, jobs, words))).toEqual(jobs.map((job) => 2 * job));
  });

  it("goes on with another thread where one breaks down or ends, and says at which job", async () => {
    const answers = onAllCores<number, number | string>(doubling, 2, [1, 3, 4, 3, 5, 6], words);
    expect(await Promise.all(answers)).toEqual([2, "3: not three", "4: its thread ended", "3: not three", 10, 12]);
  });

  it("ends where no thread can be started at all", async () => {
    const answers = onAllCores<number, string>(program(`throw new Error("no program");`), 2, [1, 2, 3], words);
    expect(await Promise.all(answers)).toEqual(["1: no program", "2: no program", "3: no program"]);
  });

  it("has nothing to do without jobs", () => {
    expect(onAllCores(doubling, 2, [], words)).toEqual([]);
  });
});
