/** The calculation engine in a worker of its own, so that nobody waits for it while typing; its program lies beside the page. */
import init from "@ironcalc/wasm";
import { answerQuestions } from "./engineAnswers";

answerQuestions(init());
