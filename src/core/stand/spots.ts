/** Spots on the ground: how far apart they lie, in metres. */
import { Decimal, sum } from "../numbers/decimal";
import { remembered } from "../numbers/remembered";
import { pi, type Coordinates } from "./standCount";

const halfTurn = new Decimal("180");

/** Metres in a degree to the north and to the east, at a latitude. */
type DegreeLengths = { readonly north: Decimal; readonly east: Decimal };

/**
 * Lengths of a degree on the ellipsoid WGS 84, by the series in the latitude φ that surveyors use (from memory; within 0.1 m of the
 * ellipsoid at 42°):
 *
 *     north  111,132.954 − 559.822 cos 2φ + 1.175 cos 4φ
 *     east   111,412.84 cos φ − 93.5 cos 3φ + 0.118 cos 5φ
 */
export const degreeLengths = remembered((latitude: Decimal): DegreeLengths => {
  const cos = (times: string) => latitude.times(times).times(pi).div(halfTurn).cos();
  return {
    north: new Decimal("111132.954").minus(cos("2").times("559.822")).plus(cos("4").times("1.175")),
    east: cos("1").times("111412.84").minus(cos("3").times("93.5")).plus(cos("5").times("0.118")),
  };
});

/**
 * The middle of some spots: half of them lie north of it and half east, so that one that is far off does not move it.
 *
 * @param spots at least one
 */
export function middleOf(spots: readonly Coordinates[]): Coordinates {
  const median = (inOrder: readonly Decimal[]): Decimal =>
    inOrder.length > 2 ? median(inOrder.slice(1, -1)) : sum(inOrder).div(String(inOrder.length));
  const middle = (values: readonly Decimal[]) => median([...values].sort((a, b) => a.comparedTo(b)));
  return { latitude: middle(spots.map(({ latitude }) => latitude)), longitude: middle(spots.map(({ longitude }) => longitude)) };
}

/** Metres east and north of a point, on the plane that touches the ground there: good for the few miles of a field. */
export function metresFrom(from: Coordinates, { latitude, longitude }: Coordinates): { readonly east: Decimal; readonly north: Decimal } {
  const { north, east } = degreeLengths(from.latitude);
  return { east: longitude.minus(from.longitude).times(east), north: latitude.minus(from.latitude).times(north) };
}
