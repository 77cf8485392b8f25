/** The columns of the table Matches. */
import { matchesTable, tableNames } from "../tableNames";
import { declared, text } from "./column";

export const matchColumns = declared(matchesTable, {
  table: { ...text("Table", { required: true, hint: "The table of ours that the range stands for.", width: 18 }), choices: tableNames },
  range: text("Range", {
    required: true,
    hint: "The range with its headings, such as Invoices!A1:F200, or the name of a table of your own.",
    width: 30,
  }),
  column: text("Column", { required: true, hint: "Our heading.", width: 24 }),
  heading: text("Heading", { required: true, hint: "The heading in the range.", width: 24 }),
});
