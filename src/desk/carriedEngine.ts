/** The same worker as `engineWorker.ts` with its program inside, for a page that is one file. */
import init from "@ironcalc/wasm";
import program from "@ironcalc/wasm/wasm_bg.wasm";
import { answerQuestions } from "./engineAnswers";

answerQuestions(init({ module_or_path: program }));
