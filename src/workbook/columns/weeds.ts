/** The columns of the table Weeds. */
import { date, declared, text } from "./column";
import { placeColumns, remarkWords } from "./shared";

export const weedColumns = declared("Weeds", {
  ...placeColumns({ required: true, hint: "Where it was seen: a field, or a crop for all its fields." }),
  weed: text("Weed", {
    required: true,
    hint: "Its name, as the column Controls of the table Items has it.",
    width: 24,
    words: ["species", "pest"],
  }),
  resistantTo: text("Resistant to", {
    hint: "Sites of action that it no longer dies of, by number, as 2, 9. Blank: none that you know of.",
    width: 16,
    words: ["resistance", "resistant", "resistantsites"],
  }),
  seenOn: date("Seen on", {
    hint: "The day it was seen.",
    words: ["seen", "found", "scouted"],
    movesNothing: [{ why: "It is printed beside the weed." }],
  }),
  note: text("Note", { hint: "How many, how tall, where in the field.", width: 36, words: remarkWords }),
});
