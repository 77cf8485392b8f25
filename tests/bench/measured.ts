/** How long work takes: of the processor, which others on the machine lengthen least, and by the clock. Milliseconds. */
export type Times = {
  /** The least time of the processor: of all threads of this process, the collection of garbage among them. */
  readonly processor: number;
  /** By the clock. */
  readonly median: number;
  readonly least: number;
};

/** Work that takes long is not begun again once it has had so many milliseconds: what runs for seconds varies little. */
const longestOfAll = 3_000;

/** Runs some work so often, each time to its end; less often where it takes long. */
export async function timed(runs: number, work: () => unknown): Promise<Times> {
  const taken: { readonly processor: number; readonly clock: number }[] = [];
  for (let run = 0, all = 0; run === 0 || (run < runs && all < longestOfAll); run += 1) {
    const [cpu, start] = [process.cpuUsage(), performance.now()];
    await work();
    const clock = performance.now() - start;
    const { user, system } = process.cpuUsage(cpu);
    const processor = (user + system) / 1000;
    all += processor;
    taken.push({ processor, clock });
  }
  const clocks = taken.map(({ clock }) => clock);
  return { processor: Math.min(...taken.map(({ processor }) => processor)), median: percentile(clocks, 50), least: Math.min(...clocks) };
}

/** The value below which so many of a hundred lie. */
export function percentile(values: readonly number[], of: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil((sorted.length * of) / 100) - 1)]!;
}
