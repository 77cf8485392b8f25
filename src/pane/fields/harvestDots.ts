/** Harvested fields of a crop side by side: ranked by yield, and as dots against planting date and stand. No trial, so no cause is told. */
import { Decimal, hundred } from "../../core/numbers/decimal";
import type { CropFigures } from "../../core/figures";
import { accounts } from "../../core/accounts";
import { dayOfYear } from "../../core/stand/monthDay";
import type { SeasonReport } from "../../workbook/seasonReport";
import { noFigure, type Format } from "../format";
import type { FigureRow } from "../season/cropView";

/** Percents of the picture's width from the left and of its height from the top; `mark` is the field's place in the list. */
type Dot = { readonly mark: string; readonly x: string; readonly y: string };
export type DotPlot = {
  readonly across: string;
  readonly says: string;
  readonly dots: readonly Dot[];
  /** What stands at the ends of either axis. */
  readonly left: string;
  readonly right: string;
  readonly top: string;
  readonly bottom: string;
};
export type HarvestedFields = {
  readonly crop: string;
  readonly unit: string;
  readonly columns: readonly string[];
  readonly rows: readonly FigureRow[];
  readonly plots: readonly DotPlot[];
};

type Point = { readonly mark: string; readonly field: string; readonly at: Decimal; readonly words: string; readonly yield: Decimal };

/** Crops of which two fields at least are harvested, the field of the highest yield first. */
export function harvestedFields(report: SeasonReport, format: Format): readonly HarvestedFields[] {
  const { season, figures } = report;
  const entries = new Map(season.fields.map((field) => [field.name, field]));
  const stands = new Map(figures.stands.map(({ field, summary }) => [field.name, summary.mean]));
  const heat = new Map(accounts(season).weather.map(({ field, heatUnits }) => [field, heatUnits]));
  return figures.crops.flatMap((crop): readonly HarvestedFields[] => {
    const ranked = doneFields(crop);
    if (ranked.length < 2) return [];
    const numbered = ranked.map((each, index) => ({ ...each, mark: String(index + 1), entry: entries.get(each.field)! }));
    const dates = numbered.flatMap(({ mark, field, yield: harvested, entry: { planted } }): readonly Point[] =>
      planted === null ? [] : [{ mark, field, yield: harvested, at: planting(planted), words: format.day(planted.slice(5)) }],
    );
    const counted = numbered.flatMap(({ mark, field, yield: harvested }): readonly Point[] => {
      const stand = stands.get(field);
      return stand === undefined ? [] : [{ mark, field, yield: harvested, at: stand, words: format.plants(stand) }];
    });
    return [
      {
        crop: crop.crop,
        unit: crop.yieldUnit,
        columns: ["yield", "goal", "planted", "stand", "heat"],
        rows: numbered.map(({ mark, field, yield: harvested, goal, entry: { planted, variety } }) => ({
          name: `${mark}. ${field}${variety === null ? "" : `, ${variety}`}`,
          cells: [
            format.yield(harvested),
            format.yield(goal),
            planted === null ? noFigure : format.day(planted.slice(5)),
            format.plants(stands.get(field) ?? null),
            heat.has(field) ? format.whole(heat.get(field)!) : noFigure,
          ],
        })),
        plots: [plotOf("planting date", dates, crop, format), plotOf(`plants per ${format.areaName}`, counted, crop, format)].flatMap(
          (plot) => (plot === null ? [] : [plot]),
        ),
      },
    ];
  });
}

const doneFields = ({ fields }: CropFigures) =>
  fields
    .flatMap(({ field, final }) => (final === null ? [] : [{ field, yield: final.budget.yields.used, goal: final.budget.yields.goal }]))
    .sort((a, b) => b.yield.comparedTo(a.yield));

/** Days from the first of the year, less by a year for a crop that was planted in the autumn before. */
const planting = (date: string): Decimal => (date.slice(5) > "07-31" ? dayOfYear(date).minus("365") : dayOfYear(date));

/** @returns `null` where fewer than two fields are placed, or all stand at one place */
function plotOf(across: string, points: readonly Point[], { crop, yieldUnit }: CropFigures, format: Format): DotPlot | null {
  const sorted = [...points].sort((a, b) => a.at.comparedTo(b.at));
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (first === undefined || last === undefined || first.at.eq(last.at)) return null;
  const yields = points.map(({ yield: harvested }) => harvested);
  const [least, most] = [Decimal.min(...yields), Decimal.max(...yields)];
  const part = (value: Decimal, from: Decimal, to: Decimal) => (from.eq(to) ? new Decimal("0.5") : value.minus(from).div(to.minus(from)));
  return {
    across,
    left: first.words,
    right: last.words,
    top: format.yield(most),
    bottom: format.yield(least),
    dots: points.map(({ mark, at, yield: harvested }) => ({
      mark,
      x: part(at, first.at, last.at).times(hundred).toFixed(1),
      y: hundred.minus(part(harvested, least, most).times(hundred)).toFixed(1),
    })),
    says: `${crop}, ${yieldUnit} per ${format.areaName} by ${across}: ${sorted.map(({ field, words, yield: harvested }) => `${field} ${words}, ${format.yield(harvested)}`).join("; ")}.`,
  };
}
