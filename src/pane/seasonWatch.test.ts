import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { reportOf } from "../../tests/support/paneSeason";
import { HostError, type WorkbookHost } from "../host/workbookHost";
import type { WorkbookContent } from "../workbook/cell";
import { firstPause, hintDelay, longestTrust, watchSeason } from "./seasonWatch";

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
    const watch = watchSeason(host, () => {
      throw new RangeError("our own");
    });
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
    const stop = watchSeason(
      {
        ...host,
        onChanged: async (changed) => {
          await host.onChanged(changed);
          return stopped;
        },
      },
      () => report,
    ).start();
    readings[0]!.answer();
    await settle();
    hint();
    stop();
    await vi.advanceTimersByTimeAsync(hintDelay * 2);
    expect(stopped).toHaveBeenCalledOnce();
    expect(readings).toHaveLength(1);
  });

  it("keeps the figures without an alert while a cell is being typed into, and reads once it is left", async () => {
    const { host, readings, hint } = slowHost();
    const watch = watchSeason(host, () => report);
    watch.start();
    readings[0]!.answer();
    await settle();
    hint();
    await vi.advanceTimersByTimeAsync(hintDelay);
    readings[1]!.refuse(new HostError("busy", "A cell is being typed into."));
    await settle();
    expect(watch.state()).toMatchObject({ reading: { report }, failure: null });
    await vi.advanceTimersByTimeAsync(firstPause);
    readings[2]!.refuse(new HostError("busy", "A cell is being typed into."));
    await vi.advanceTimersByTimeAsync(2 * firstPause - 1);
    expect(readings).toHaveLength(3);
    await vi.advanceTimersByTimeAsync(1);
    readings[3]!.refuse(new HostError("failed", "Excel met a fault of its own."));
    await settle();
    expect(watch.state().failure).toMatchObject({ what: "Excel met a fault of its own." });
  });

  it("says that the workbook is busy to somebody who asked for the reading, and goes on trying", async () => {
    const { host, readings } = slowHost();
    const watch = watchSeason(host, () => report);
    watch.start();
    readings[0]!.answer();
    await settle();
    const asked = watch.refresh();
    readings[1]!.refuse(new HostError("busy", "Excel is busy."));
    expect(await asked).toMatchObject({ ok: false });
    expect(watch.state().failure).toMatchObject({ what: "Excel is busy." });
    await vi.advanceTimersByTimeAsync(firstPause);
    readings[2]!.answer();
    await settle();
    expect(watch.state().failure).toBeNull();
  });

  it("reads when the user comes back only if something is unread, nothing is heard or the figures are over five minutes old", async () => {
    const { host, readings, hint } = slowHost();
    const watch = watchSeason(host, () => report);
    watch.start();
    readings[0]!.answer();
    await vi.advanceTimersByTimeAsync(longestTrust - 1);
    watch.returned();
    expect(vi.getTimerCount()).toBe(0);
    await vi.advanceTimersByTimeAsync(1);
    watch.returned();
    await vi.advanceTimersByTimeAsync(hintDelay);
    expect(readings).toHaveLength(2);
    readings[1]!.answer();
    await settle();
    watch.returned();
    expect(vi.getTimerCount()).toBe(0);
    hint();
    await vi.advanceTimersByTimeAsync(hintDelay);
    readings[2]!.refuse(new HostError("missing", "A table is gone."));
    await settle();
    watch.returned();
    await vi.advanceTimersByTimeAsync(hintDelay);
    expect(readings).toHaveLength(4);
  });

  it("listens again after each good reading as long as it is deaf, and not where the host never will", async () => {
    const { host, readings } = slowHost();
    const answers: (() => Promise<() => Promise<void>>)[] = [];
    const deaf = (reason: "busy" | "unsupported") => () => Promise.reject(new HostError(reason, "Not now."));
    const onChanged = vi.fn(() => answers.shift()!());
    const watch = watchSeason({ ...host, onChanged }, () => report);
    answers.push(deaf("busy"), deaf("busy"), () => Promise.resolve(() => Promise.resolve()));
    watch.start();
    await settle();
    for (const [reading, calls] of [
      [0, 2],
      [1, 3],
      [2, 3],
    ] as const) {
      readings[reading]!.answer();
      await settle();
      expect(onChanged).toHaveBeenCalledTimes(calls);
      void watch.refresh();
    }
    expect(watch.state().deaf).toBeNull();
  });

  it("gives back at once what is registered after it was stopped", async () => {
    const { host } = slowHost();
    const stopped = vi.fn(() => Promise.resolve());
    let register: (stop: () => Promise<void>) => void = () => undefined;
    const stop = watchSeason(
      {
        ...host,
        onChanged: () =>
          new Promise((resolve) => {
            register = resolve;
          }),
      },
      () => report,
    ).start();
    stop();
    register(stopped);
    await settle();
    expect(stopped).toHaveBeenCalledOnce();
  });
});
