/** The columns of the table Stand counts. */
import { count, date, declared, degrees, quantity, text } from "./column";
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
  latitude: degrees("Latitude", {
    hint: "Degrees, north above zero: 41.58680.",
    words: ["lat", "y", "gpslatitude", "gpslat"],
    movesNothing: [{ why: "The map in the pane shows the spot there." }],
  }),
  longitude: degrees("Longitude", {
    hint: "Degrees, east above zero, so below zero in North America: -93.62000.",
    words: ["lon", "lng", "long", "x", "gpslongitude", "gpslong", "gpslon"],
    movesNothing: [{ why: "The map in the pane shows the spot there." }],
  }),
  part: text("Part", {
    hint: "Part of the field, by a name of yours. Blank: the field, or what is left of it.",
    words: ["zone", "partoffield", "fieldpart", "subfield", "section"],
  }),
  partAcres: quantity("Part acres", {
    unit: "area",
    range: "above zero",
    hint: "Acres (hectares) of the whole part, once a part.",
    words: ["partarea", "parthectares", "zoneacres", "zonearea", "partha"],
  }),
  partPlanted: date("Part planted", {
    hint: "Where the part was planted on another day than the field, or planted again. Counts from before it are history.",
    words: ["replanted", "partplanteddate", "dateofpart"],
  }),
  remark: text("Remark", { hint: "What was seen.", width: 30, words: ["note", "notes", ...remarkWords] }),
});
