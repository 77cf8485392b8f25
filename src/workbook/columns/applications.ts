/** The columns of the table Applications. */
import { declared, quantity, text } from "./column";
import { acresWords, dateColumn, itemColumn, placeColumns, rateWords, statusColumn } from "./shared";

export const applicationColumns = declared("Applications", {
  ...placeColumns({ required: true, hint: "A field, or a crop for all its fields." }),
  item: itemColumn({ hint: "A name from the table Items." }),
  rate: quantity("Rate", { required: true, hint: "How much per area.", words: rateWords }),
  rateUnit: text("Rate unit", {
    required: true,
    hint: "Unit per area: seeds/ac, lb/ac, gal/ac, fl oz/ac, lb N/ac.",
    width: 18,
    words: ["uom", "unit"],
  }),
  acres: quantity("Acres", { unit: "area", range: "above zero", hint: "Blank: the whole field or crop.", words: acresWords }),
  date: dateColumn({ hint: "When it is planned or was done." }),
  status: statusColumn(),
  carrier: quantity("Carrier per acre", {
    range: "above zero",
    hint: "Of a spray mix: gallons per acre (litres per hectare) in all. Rows of one field or crop and day are one mix.",
  }),
  tankSize: quantity("Tank size", { range: "above zero", hint: "Gallons (litres) that the tank takes, on one row of the mix." }),
});
