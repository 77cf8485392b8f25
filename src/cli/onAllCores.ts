/** One kind of work on many things, on all cores of the machine: threads that run a program of their own. */
import { parentPort, Worker } from "node:worker_threads";

type Turn<Job, Answer> = { readonly job: Job; readonly end: (answer: Answer) => void };

/**
 * Hands each job to the next thread that is free; the answers are in the order of the jobs, each there as soon as it is known.
 *
 * @param program what a thread runs: it calls `answerJobs`
 * @param brokenDown the answer to a job at which its thread broke down; another thread goes on with the rest
 */
export function onAllCores<Job, Answer>(
  program: URL,
  threads: number,
  jobs: readonly Job[],
  brokenDown: (job: Job, cause: unknown) => Answer,
): readonly Promise<Answer>[] {
  const waiting: Turn<Job, Answer>[] = [];
  const answers = jobs.map((job) => new Promise<Answer>((end) => waiting.push({ job, end })));
  const begin = (): void => {
    let turn = waiting.shift();
    if (turn === undefined) return;
    const worker = new Worker(program);
    const go = () => {
      if (turn === undefined) void worker.terminate();
      else worker.postMessage(turn.job);
    };
    worker.on("message", (answer: Answer) => {
      turn!.end(answer);
      turn = waiting.shift();
      go();
    });
    let why: unknown = new Error("its thread ended");
    worker.on("error", (cause) => (why = cause));
    // Follows an error, and comes alone where the thread ended itself.
    worker.on("exit", () => {
      if (turn === undefined) return;
      turn.end(brokenDown(turn.job, why));
      begin();
    });
    go();
  };
  for (let thread = 0; thread < threads; thread += 1) begin();
  return answers;
}

/** What a thread does: it answers one job after another. What is thrown ends the thread. */
export function answerJobs<Job, Answer>(work: (job: Job) => Promise<Answer>): void {
  const port = parentPort!;
  port.on("message", (job: Job) => void work(job).then((answer) => port.postMessage(answer)));
}
