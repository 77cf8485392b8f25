/** Where corn is by its heat units since planting, 86/50. Means of trials, for the eye: an estimate. */
import { Decimal, larger, zero } from "../numbers/decimal";

/** Until it is up: 100 to 120 are printed (Ohio State University Extension, 2018, with 82 a leaf collar to V10; Purdue 50 after it). */
const toEmerge = new Decimal("120");
const perLeaf = new Decimal("82");
const laterPerLeaf = new Decimal("50");
const leavesAtFirst = new Decimal("10");
const lastLeaf = new Decimal("18");

/** Leaf collars, a fraction of the next among them; `null` before it is up. */
export function leafStage(heatUnits: Decimal, emergence: Decimal = toEmerge): Decimal | null {
  if (heatUnits.lt(emergence)) return null;
  const slow = heatUnits.minus(emergence).div(perLeaf);
  return slow.lte(leavesAtFirst)
    ? slow
    : leavesAtFirst.plus(heatUnits.minus(emergence).minus(leavesAtFirst.times(perLeaf)).div(laterPerLeaf));
}

/** Heat units that a hybrid of 2,700 still needs from each stage to black layer (Purdue University Agronomy, 1996, after NCH-40). */
const stillNeeded = [
  { stage: "R1", units: "1300" },
  { stage: "R2", units: "1040" },
  { stage: "R3", units: "900" },
  { stage: "R4", units: "775" },
  { stage: "R4.5", units: "510" },
  { stage: "R5", units: "250" },
  { stage: "R6", units: "0" },
] as const;

/** The youngest stage that so many heat units still bring to black layer. */
export const youngestThatMakesIt = (left: Decimal): string => stillNeeded.find(({ units }) => left.gte(units))!.stage;

/**
 * The stage at a sum since planting: leaves, and from silking on by what the hybrid's rating leaves, where it is known.
 *
 * @param rating heat units from planting to black layer
 */
export function stageAt(heatUnits: Decimal, rating: Decimal | null): string {
  const left = rating === null ? null : larger(rating.minus(heatUnits), zero);
  const reached = left === null ? undefined : stillNeeded.findLast(({ units }) => left.lte(units));
  if (reached !== undefined) return reached.stage;
  const leaves = leafStage(heatUnits);
  if (leaves === null) return "not up";
  return leaves.lt("1") ? "VE" : leaves.gt(lastLeaf) ? "past V18" : `V${leaves.floor().toFixed()}`;
}

/** Days after 1 May for each of which a rating in 86/50 units falls by 6.8 (published for Indiana and Ohio; Purdue). */
const perLateDay = new Decimal("6.8");

/** A rating for a planting so many days after 1 May; the rating itself for one before. */
export const ratingWhenPlanted = (rating: Decimal, daysAfterMayFirst: Decimal): Decimal =>
  rating.minus(larger(daysAfterMayFirst, zero).times(perLateDay));
