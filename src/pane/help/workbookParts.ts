/** Help on what becomes of the workbook: what is written and never written, undo, printing, protection, privacy. */
import { list, terms, words, type HelpPart } from "./part";

export const beginPart: HelpPart = {
  id: "begin",
  title: "To begin",
  blocks: [
    list(
      "In an empty workbook the pane opens with three short steps: crops and acres; what an acre needs, kind by kind; land and " +
        "loans. Ten numbers give cost per acre and break-evens.",
      "Then enter what you buy, one entry for each invoice line (Inputs, or the table Purchases), and what is done in the fields " +
        "(Applications, Operations).",
      "After emergence add stand counts; at harvest, loads; through the year, sales.",
      "Every figure opens down to kind, field and entry; a click on an entry selects its cell.",
    ),
    words(
      "Have sheets of your own? More, Tables, Match a range of your own points the pane at any range and matches its headings. The " +
        "match is kept in the table Matches, where you can see it.",
    ),
  ],
};

export const faultsPart: HelpPart = {
  id: "entries-to-fix",
  title: "Entries to fix, and incomplete figures",
  blocks: [
    words(
      "A cell that cannot be understood is never guessed at and never left out in silence. It is listed under Entries to fix with " +
        "its cell, what was found and what to do, and every figure that it touches is marked incomplete, also on paper.",
    ),
    terms(
      ["Entry to fix", "Leaves figures incomplete until it is put right."],
      ["To check", "Something unusual, such as two invoice lines that are alike. Figures stay complete."],
      ["Being entered", "A half-typed last entry: not counted yet, and told."],
    ),
  ],
};

export const neverPart: HelpPart = {
  id: "never-changed",
  title: "What is never changed in your workbook",
  blocks: [
    list(
      "Nothing that you typed is ever overwritten. The pane adds entries, adds a column that a table lacks, or changes one cell, " +
        "each only when you press the button for it; a cell that holds a formula is not written over.",
      "A yield goal is never written. Projected yields stand beside it.",
      "Tables are made only when you ask for them.",
      "Result sheets (Cost per acre, Break-even, Lender pages and so on) are the pane's own: they are made again at each writing, " +
        "so keep notes elsewhere. A sheet of yours with such a name stays, and ours gets another name.",
      "Your own sheets, columns, formulas, charts and macros are left as they are. The desk saves them as they were in the file.",
    ),
  ],
};

export const undoPart: HelpPart = {
  id: "undo",
  title: "Undo and Take back",
  blocks: [
    terms(
      [
        "In Excel",
        "One press of a button in the pane is one step of Excel's Undo (Ctrl+Z), where Excel can undo it. Where Excel does not say " +
          "that it can, the pane offers Take back after entries were added or cells changed, until they say something else.",
      ],
      [
        "What cannot be taken back in the pane",
        "Sheets and tables that were made, and columns that were added. Delete those in Excel as you would your own. Writing result " +
          "sheets again brings them up to date.",
      ],
      [
        "On the desk",
        "Undo and Redo (Ctrl+Z, Ctrl+Y), and each says what it undid. The whole of Start, or of writing several sheets, is one step.",
      ],
    ),
  ],
};

export const sharedPart: HelpPart = {
  id: "protected-and-shared",
  title: "Protected and shared workbooks",
  blocks: [
    list(
      "Protected sheet or structure: figures are read as always. Before anything is written it is asked whether it may be; if not, " +
        "nothing is written at all and the pane names the sheet. Unprotect it in Excel, do the work, and protect it again.",
      "Read-only file: everything can be read; to write, save a copy.",
      "Shared workbook, several people at once: the pane reads again when anything changes, and looks at an entry before it changes " +
        "it. Two people who change the same cell at the same moment: the later one stands, as in Excel itself.",
      "Filtered and hidden entries count. A filter changes what you see and no figure.",
      "A cell that is being edited keeps Excel from answering: the pane waits, says so, and goes on once you leave the cell.",
      "The file is an ordinary .xlsx workbook: whoever has no Pennyacre still sees every entry and every sheet written.",
    ),
  ],
};

export const printingPart: HelpPart = {
  id: "printing",
  title: "Printing",
  blocks: [
    list(
      "Lender writes two pages and a cash flow by month; More, Sheets to print writes the others. Print them as any sheet: page " +
        "setup, repeated headings and page numbers are set, in black and white too.",
      "Figures in a thin box on the lender pages may be changed: try another price or yield, and the sheet works out the rest by " +
        "Excel's own formulas. Your entries do not change.",
      "Each sheet says its date, what it contains and leaves out, and carries the mark incomplete where entries are to be fixed. " +
        "Write it again after you entered something.",
      "Input tables print across, with their headings on each page.",
    ),
  ],
};

export const privacyPart: HelpPart = {
  id: "privacy",
  title: "Privacy",
  blocks: [
    words(
      "Your figures stay in your workbook. They are worked out in the page itself; there is no account, no server of ours and no " +
        "counting of what you do. Nothing leaves the page.",
    ),
    list(
      "In Excel, Microsoft's own library connects the pane with the workbook; what Excel and your cloud storage do with a file is " +
        "between you and them.",
      "The desk keeps a draft in this browser against a crash, and offers it back. On a computer that others use, save your file " +
        "and discard the draft.",
      "A workbook that you send holds all that you typed. For a lender, send the printed pages where you do not want to send the whole.",
    ),
  ],
};
