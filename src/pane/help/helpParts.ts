/** The help, in the order in which it is read. */
import { cautionsOf, estimateCaution, planningCaution, works, worseYears, type CautionedWork } from "../../core/cautions";
import { breakEvenPart, layersPart, stagesPart, unitsPart } from "./figureParts";
import { glossaryPart } from "./glossary";
import { list, terms, words, type HelpPart } from "./part";
import { tablesPart } from "./tableParts";
import { beginPart, faultsPart, neverPart, printingPart, privacyPart, sharedPart, undoPart } from "./workbookParts";

const workNames: Readonly<Record<CautionedWork, string>> = {
  planter: "Under a planter",
  tank: "In the tank",
  replant: "Before a stand is destroyed",
  ammonia: "Ammonia",
  dryer: "Dryer",
  bin: "Grain bin",
  "long hours": "Long hours",
};

const cautionsPart: HelpPart = {
  id: "cautions",
  title: "Cautions",
  blocks: [
    list(
      planningCaution,
      worseYears,
      estimateCaution,
      "Tables of one region say so beside the figure. No yield effect of a product or part is ever built in, and no product or rate " +
        "is proposed.",
    ),
    terms(...works.map((work) => [workNames[work], cautionsOf[work].join(" ")] as const)),
  ],
};

const keysPart: HelpPart = {
  id: "keys",
  title: "Keys",
  blocks: [
    words(
      "Everything can be reached by keys. In the pane Tab goes on; arrows, Home and End go from page to page at the top; Enter or " +
        "Space opens a line. In a list that completes a name, Enter or Tab takes it and Esc leaves it.",
    ),
    terms([
      "On the desk",
      "F2 or typing edits a cell, Enter keeps it, Esc gives it up; Alt+Down opens a column's list; Insert adds an entry, " +
        "Ctrl+Delete deletes one; Ctrl+D fills down; Ctrl+F finds, Ctrl+Shift+F filters; Alt+Shift with the arrows up and down sorts, " +
        "left and right sets the width; Ctrl+P prints; Ctrl+Z undoes, Ctrl+Y does it again.",
    ]),
  ],
};

export const helpParts: readonly HelpPart[] = [
  beginPart,
  layersPart,
  stagesPart,
  breakEvenPart,
  unitsPart,
  tablesPart,
  faultsPart,
  neverPart,
  undoPart,
  sharedPart,
  printingPart,
  privacyPart,
  cautionsPart,
  keysPart,
  glossaryPart,
];
