/** The columns of the table Stand counts. */
import { count, declared, quantity, text } from "./column";
import { dateColumn, fieldColumn, remarkWords, rowWidthWords } from "./shared";

export const standCountColumns = declared("Stand counts", {
  field: fieldColumn({ hint: "A name from the table Fields." }),
  date: dateColumn({ required: true, hint: "The day of the count." }),
  rowWidth: quantity("Row width", {
    unit: "across",
    range: "above zero",
    hint: "Inches (centimetres). Blank: the field's.",
    words: rowWidthWords,
  }),
  length: quantity("Length", {
    unit: "along",
    range: "above zero",
    hint: "Length of row counted, feet (metres): 17 ft 5 in at 30 in rows is a thousandth of an acre.",
    words: ["rowlength", "feet"],
  }),
  hoop: quantity("Hoop diameter", { unit: "across", range: "above zero", hint: "Instead of a length: inches (centimetres)." }),
  plants: count("Plants", {
    unit: "plants",
    required: true,
    hint: "Plants that will live.",
    words: ["stand", "livingplants", "plantscounted", "count", "plantcount"],
  }),
  weak: count("Weak plants", {
    unit: "plants",
    was: ["Doubtful plants"],
    hint: "Plants that may live; each counts half.",
    words: ["doubtful", "weak"],
  }),
  remark: text("Remark", { hint: "What was seen.", width: 30, words: ["note", "notes", ...remarkWords] }),
});
