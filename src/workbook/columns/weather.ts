/** The columns of the table Weather. */
import { declared, quantity, text } from "./column";
import { dateColumn } from "./shared";

export const weatherColumns = declared("Weather", {
  date: dateColumn({
    required: true,
    hint: "The day. Earlier years in the same table are the normal.",
    words: ["day", "localdate", "datetime", "obsdate"],
  }),
  high: quantity("High", {
    required: true,
    range: "any",
    hint: "Highest temperature of the day, by the setting Temperature unit. Blank: missing, which is told.",
    words: ["tmax", "maxtemp", "max", "hightemp", "maxtemperature", "maximum"],
  }),
  low: quantity("Low", {
    required: true,
    range: "any",
    hint: "Lowest temperature of the day.",
    words: ["tmin", "mintemp", "min", "lowtemp", "mintemperature", "minimum"],
  }),
  rain: quantity("Rain", {
    hint: "Inches (millimetres with hectares). Blank: not recorded; 0: none.",
    words: ["prcp", "precip", "precipitation", "totalprecip", "rainfall"],
  }),
  place: text("Place", {
    hint: "Where it was recorded, as Weather place in the table Fields names it. Blank: the only place.",
    width: 18,
    words: ["station", "stationname", "location", "site"],
  }),
});
