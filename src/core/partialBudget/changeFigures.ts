/** The changes of a season, their grain priced from its own outlook. */
import type { Budget, CropFigures } from "../figures";
import type { Target } from "../row";
import type { Season } from "../season";
import { changeAnswer, type ChangeAnswer, type PriceRange } from "./changeAnswer";
import { grainOf } from "./grain";
import type { SeasonChange } from "./seasonChange";

export type ChangeFigures = ChangeAnswer & {
  /** As it is entered, the lines that sell its crop priced. */
  readonly change: SeasonChange;
  /** The crop that it is about; `null` where it is about the whole farm. */
  readonly crop: string | null;
};

/**
 * The answer to every change, in the order of the table.
 *
 * @throws RangeError on a change about a field or crop that the season does not grow, or one that sells its crop and names none: the
 * reader turns both away
 */
export function changeFigures({ changes, crops: entered }: Season, crops: readonly CropFigures[]): readonly ChangeFigures[] {
  return changes.map((change) => {
    const crop = change.target === null ? null : cropOf(change.target, crops);
    if (change.target !== null && crop === null) throw new RangeError(`the change ${change.name} is about a crop that no field grows`);
    const prices = entered.find(({ name }) => name === crop?.crop);
    const priced = withGrain(change, crop);
    const range: PriceRange | null =
      prices === undefined
        ? null
        : {
            low: prices.lowPrice,
            expected: prices.price,
            high: prices.highPrice,
            ...(crop !== null && { cropYield: budgetOf(change.target!, crop).yields.used }),
          };
    return { ...changeAnswer(priced, range), change: priced, crop: crop?.crop ?? null };
  });
}

function withGrain(change: SeasonChange, crop: CropFigures | null): SeasonChange {
  if (!change.lines.some(({ sellsCrop }) => sellsCrop)) return change;
  if (crop === null) throw new RangeError(`the change ${change.name} sells grain and names no crop`);
  const grain = grainOf(budgetOf(change.target!, crop));
  return { ...change, lines: change.lines.map((line) => (line.sellsCrop ? { ...line, price: grain } : line)) };
}

const cropOf = (target: Target, crops: readonly CropFigures[]): CropFigures | null =>
  crops.find(({ crop, fields }) => ("crop" in target ? crop === target.crop : fields.some(({ field }) => field === target.field))) ?? null;

/** The outlook of what a change is about. */
const budgetOf = (target: Target, { outlook, fields }: CropFigures): Budget =>
  "crop" in target ? outlook : fields.find(({ field }) => field === target.field)!.outlook.budget;
