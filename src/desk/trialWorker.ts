/** Tries a file apart from the page; its program lies beside the page. */
import { answerTrial } from "./trialAnswers";

answerTrial();
