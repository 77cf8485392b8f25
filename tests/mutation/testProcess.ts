/** The process that holds the tests, begun again after it was ended. */
import { fork, type ChildProcess } from "node:child_process";
import type { Answer, Asked } from "./testRun";

export class TestProcess {
  #process: ChildProcess | null = null;

  answer(asked: Asked): Promise<Answer> {
    // Endless lists end sooner so.
    const tests = (this.#process ??= fork("tests/mutation/testRun.ts", { execArgv: ["--import", "tsx", "--max-old-space-size=2500"] }));
    return new Promise((told, failed) => {
      const ended = () => {
        this.#process = null;
        told({ endless: true });
      };
      tests.once("exit", ended);
      tests.once("message", (answer: Answer) => {
        tests.off("exit", ended);
        if ("endless" in answer) this.end();
        if ("fault" in answer) failed(new Error(answer.fault));
        else told(answer);
      });
      tests.send(asked);
    });
  }

  end(): void {
    this.#process?.kill("SIGKILL");
    this.#process = null;
  }
}
