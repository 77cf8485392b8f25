import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { chain } from "../../tests/support/xlsx/heavyFiles";
import { needsTrial, trialOf, type TrialWorker } from "./trial";

function standIn() {
  const told = { asked: 0, terminated: 0 };
  const worker: TrialWorker = {
    postMessage: () => void (told.asked += 1),
    terminate: () => void (told.terminated += 1),
    onmessage: null,
    onerror: null,
  };
  return { worker, told };
}
const file = new Uint8Array([1]);

describe("the trial of a file", () => {
  it("hands the file over once the program is there, and says what came of it", async () => {
    const { worker, told } = standIn();
    const { ended } = trialOf(file, () => worker);
    expect(told.asked).toBe(0);
    worker.onmessage!({ data: { is: "started" } });
    expect(told.asked).toBe(1);
    worker.onmessage!({ data: { is: "refused", words: "The workbook is damaged." } });
    expect(await ended).toEqual({ is: "refused", words: "The workbook is damaged." });
    expect(told.terminated).toBe(1);
  });
  it("ends the worker as it is given up, whatever the worker is at", async () => {
    const { worker, told } = standIn();
    const { ended, giveUp } = trialOf(file, () => worker);
    worker.onmessage!({ data: { is: "started" } });
    giveUp();
    expect(await ended).toEqual({ is: "given up" });
    expect(told.terminated).toBe(1);
  });
  it("takes a worker that breaks down on the file for a refusal, and one that never came for none", async () => {
    const [one, other] = [standIn(), standIn()];
    const broke = trialOf(file, () => one.worker);
    one.worker.onmessage!({ data: { is: "started" } });
    one.worker.onerror!({ message: "out of memory" });
    expect(await broke.ended).toEqual({ is: "refused", words: "Reading it broke down: out of memory." });
    const never = trialOf(file, () => other.worker);
    other.worker.onerror!({ message: "" });
    expect(await never.ended).toEqual({ is: "opens", milliseconds: 0 });
  });
});

describe("which files are tried", () => {
  it("the demo is not, nor what is no package; small files that unpack to much are", () => {
    expect(needsTrial(new Uint8Array(readFileSync("shared/demo-season.xlsx")))).toBe(false);
    expect(needsTrial(new TextEncoder().encode("Crop,Acres"))).toBe(false);
    const deep = chain(60_000, (row) => `A${row - 1}+1`);
    expect(needsTrial(deep)).toBe(true);
  });
});
