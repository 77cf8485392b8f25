/** What is said beside the figures of a crop about its yield table and its harvest, in the pane and on paper alike. */
import { hundred } from "../core/numbers/decimal";
import type { CropFigures, FieldFigures } from "../core/figures";
import type { StandTable } from "../core/stand/standTable";
import type { SeasonReport } from "./seasonReport";
import { shownMoney, shownQuantity } from "./shown";
import { amountWords, grouped } from "./sheets/amounts";

/** "Yield by "Corn, central Corn Belt (Purdue 2012)", for Indiana, …; not chosen by you." */
export const tableWords = ({ name, region }: Pick<StandTable, "name" | "region">, chosen: boolean): string =>
  `Yield by planting date and stand from the table ` +
  `"${name}"${region === "" ? "" : `, for ${region}`}${chosen ? "" : "; not chosen by you: name one, or none, under Stand response in the table Season"}.`;

/** The tables that the yields of a crop's fields rest on; none where no field is planted or counted. */
export function tableNotes({ figures }: SeasonReport, crop: string): readonly string[] {
  const inUse = figures.outlooks.filter(
    ({ field, byDate, stand, table }) => field.crop === crop && table !== null && (byDate !== null || stand !== null),
  );
  return [...new Set(inUse.map(({ table, chosen }) => tableWords(table!, chosen)))];
}

/** Harvests under way, what was never done of the plan, and what belongs to the next crop. */
export const harvestNotes = (report: SeasonReport, crop: CropFigures): readonly string[] => [
  ...crop.fields.filter(({ final, weighed }) => final === null && weighed !== null).map((field) => soFar(field, crop.yieldUnit)),
  ...leftOutNotes(report, crop),
];

/** What a harvest that is done leaves out: of outlook and cash flow, or of this crop's cost alone. */
export function leftOutNotes({ season: { settings } }: SeasonReport, { fields }: Pick<CropFigures, "fields">): readonly string[] {
  const undone = fields.filter(({ neverDone }) => neverDone.length > 0);
  const next = fields.filter(({ nextCrop }) => nextCrop.length > 0);
  return [
    ...(undone.length === 0
      ? []
      : [
          `Planned and not done by the last load, so left out of projected cost and cash flow: ${undone
            .map(
              ({ field, neverDone }) =>
                `${field} (${neverDone.map(({ name, areaPasses }) => `${name}, ${grouped(shownQuantity(areaPasses))} ${settings.areaUnit}`).join("; ")})`,
            )
            .join(", ")}.`,
        ]),
    ...(next.length === 0
      ? []
      : [
          `After the last load, for the next crop; paid, and in no cost of this one: ${next
            .map(
              ({ field, nextCrop }) =>
                `${field} (${nextCrop.map(({ name, amount }) => `${name} ${grouped(shownMoney(amount))}`).join("; ")})`,
            )
            .join(", ")} ${settings.currency}.`,
        ]),
  ];
}

/** "Creek: harvest so far 3,520 bu in 2 loads, 55 % of the projected yield, 2,880 left, 16.2 % moisture." */
export function soFar(
  {
    field,
    weighed,
    outlook: {
      budget: { area, yields },
    },
  }: FieldFigures,
  yieldUnit: string,
): string {
  const { quantity, loads, moisture, testWeight, dock } = weighed!;
  const crop = yields.outlook.times(area);
  const left = crop.minus(quantity);
  return (
    `${field}: harvest so far ${grouped(shownQuantity(quantity))} ${yieldUnit} in ${loads.toFixed()} ` +
    `${loads.eq("1") ? "load" : "loads"}${crop.isZero() ? "" : `, ${quantity.div(crop).times(hundred).toFixed(0)} % of the projected yield`}${left.lte("0") ? "" : `, ${amountWords(left)} left`}${moisture === null ? "" : `, ${moisture.toFixed(1)} % moisture`}${testWeight === null ? "" : `, ${testWeight.toFixed(1)} lb a bushel`}${dock.isZero() ? "" : `, ${amountWords(dock)} docked`}.`
  );
}
