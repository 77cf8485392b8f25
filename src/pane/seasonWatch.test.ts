import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { reportOf } from "../../tests/support/paneSeason";
import { HostError, type WorkbookHost } from "../host/workbookHost";
import type { WorkbookContent } from "../workbook/cell";
import { hintDelay, watchSeason } from "./seasonWatch";

const content: WorkbookContent = { dateSystem: "1900", tables: [], ranges: new Map() };
const report = reportOf();

/** A host whose readings are answered by the test, one after the other. */
function slowHost() {
  const readings: { answer: () => void; refuse: (error: Error) => void }[] = [];
  let hint: () => void = () => undefined;
  const host = {
    read: () => new Promise((resolve, reject) => readings.push({ answer: () => resolve({ ...content }), refuse: reject })),
    onChanged: (changed: () => void) => {
      hint = changed;
      return Promise.resolve(() => Promise.resolve());
    },
  } as unknown as WorkbookHost;
  return { host, readings, hint: () => hint() };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());
const settle = () => vi.advanceTimersByTimeAsync(0);

describe("following a workbook", () => {
  it("reads once for a burst of hints, after they stop", async () => {
    const { host, readings, hint } = slowHost();
    watchSeason(host, () => report).start();
    readings[0]!.answer();
    await settle();
    for (let typed = 0; typed < 5; typed += 1) {
      hint();
      await vi.advanceTimersByTimeAsync(hintDelay - 1);
    }
    expect(readings).toHaveLength(1);
    await vi.advanceTimersByTimeAsync(1);
    expect(readings).toHaveLength(2);
  });

  it("never reads twice at a time, and whoever asks meanwhile gets a reading that began later", async () => {
    const { host, readings } = slowHost();
    const watch = watchSeason(host, () => report);
    const first = watch.refresh();
    const [second, third] = [watch.refresh(), watch.refresh()];
    await settle();
    expect(readings).toHaveLength(1);
    readings[0]!.answer();
    await first;
    await settle();
    expect(readings).toHaveLength(2);
    expect(watch.state().isReading).toBe(true);
    readings[1]!.answer();
    expect(await second).toBe(await third);
    expect(watch.state().isReading).toBe(false);
  });

  it("keeps the last good reading beside the failure of a newer one, and mends with the next", async () => {
    const { host, readings } = slowHost();
    const watch = watchSeason(host, () => report);
    const first = watch.refresh();
    readings[0]!.answer();
    await first;
    const second = watch.refresh();
    readings[1]!.refuse(new HostError("busy", "Excel is busy."));
    expect(await second).toMatchObject({ ok: false, failure: { what: "Excel is busy.", again: true } });
    expect(watch.state()).toMatchObject({ reading: { report }, failure: { what: "Excel is busy." }, isReading: false });
    const third = watch.refresh();
    readings[2]!.answer();
    await third;
    expect(watch.state().failure).toBeNull();
  });

  it("hands a fault of ours to the error boundary", async () => {
    const { host, readings } = slowHost();
    const watch = watchSeason(host, () => { throw new RangeError("our own"); });
    watch.start();
    readings[0]!.answer();
    await settle();
    expect(watch.state().fault).toBeInstanceOf(RangeError);
  });

  it("says why changes are not noticed where the host cannot tell of them", async () => {
    const { host } = slowHost();
    const deafHost = { ...host, onChanged: () => Promise.reject(new HostError("unsupported", "This Excel is too old for that.")) };
    const watch = watchSeason(deafHost, () => report);
    watch.start();
    await settle();
    expect(watch.state().deaf).toMatchObject({ what: "This Excel is too old for that.", again: false });
  });

  it("stops listening and reading when it is stopped", async () => {
    const { host, readings, hint } = slowHost();
    const stopped = vi.fn(() => Promise.resolve());
    const stop = watchSeason({ ...host, onChanged: async (changed) => { await host.onChanged(changed); return stopped; } }, () => report).start();
    readings[0]!.answer();
    await settle();
    hint();
    stop();
    await vi.advanceTimersByTimeAsync(hintDelay * 2);
    expect(stopped).toHaveBeenCalledOnce();
    expect(readings).toHaveLength(1);
  });
});
