/** A plain map of the spots that were counted: where each mark stands, the scale, and the same in words. */
import type { FieldStand } from "../../core/stand/fieldStand";
import { metresFrom, middleOf } from "../../core/stand/spots";
import { standAt, type Coordinates, type StandCount } from "../../core/stand/standCount";
import { larger, zero, type Decimal } from "../../core/numbers/decimal";
import type { AreaUnit, PlantsPerArea } from "../../core/numbers/units";
import type { Format } from "../format";
import type { FigureRow } from "../season/cropView";

export type SpotMap = {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly {
    readonly x: number;
    readonly y: number;
    /** Half its width, which goes with the plants. */
    readonly size: number;
    /** A spot well under the target is a square on its corner, any other a circle. */
    readonly isThin: boolean;
  }[];
  readonly names: readonly { readonly words: string; readonly x: number; readonly y: number }[];
  readonly scale: { readonly length: number; readonly words: string };
  /** What a screen reader says of it. */
  readonly says: string;
  readonly caption: string;
  /** Every spot as figures, the thinnest first. */
  readonly rows: readonly FigureRow[];
};

type Placed = StandCount & { readonly spot: Coordinates };

const width = 300;
const [left, top] = [24, 24];
const [mostAcross, mostDown] = [width - 2 * left, 200];
/** A field is never drawn larger than if it were so wide, in metres: spots side by side stay side by side. */
const leastMetres = 40;
const [smallest, largest] = [3.5, 8];
const metresIn: Readonly<Record<AreaUnit, number>> = { ac: 0.3048, ha: 1 };
const lengthUnit: Readonly<Record<AreaUnit, string>> = { ac: "ft", ha: "m" };
/** Of the target: below it a spot is marked as thin. */
const thinBelow = "0.9";
const decimalsOfDegrees = 5;

/** `null` where no spot of the last round has coordinates. */
export function spotMap({ field, summary }: FieldStand, format: Format): SpotMap | null {
  const placed = summary.counts.filter((count): count is Placed => count.spot !== null);
  if (placed.length === 0) return null;
  const { areaUnit, plants } = format;
  const middle = middleOf(placed.map(({ spot }) => spot));
  const ground = placed.map((count) => {
    const { east, north } = metresFrom(middle, count.spot);
    return { count, stand: standAt(count, areaUnit), east: Number(east), north: Number(north) };
  });
  const [easts, norths] = [ground.map(({ east }) => east), ground.map(({ north }) => north)];
  const [west, south] = [Math.min(...easts), Math.min(...norths)];
  const [across, along] = [Math.max(...easts) - west, Math.max(...norths) - south];
  const perMetre = Math.min(mostAcross / Math.max(across, leastMetres), mostDown / Math.max(along, leastMetres));
  const x = (east: number) => round(left + (mostAcross - across * perMetre) / 2 + (east - west) * perMetre);
  const y = (north: number) => round(top + (south + along - north) * perMetre);
  const fullest = ground.reduce<Decimal>((most, { stand }) => larger(stand, most), field.targetStand ?? zero);
  const isThin = (stand: PlantsPerArea) => field.targetStand !== null && stand.lt(field.targetStand.times(thinBelow));
  const inOrder = [...ground].sort((a, b) => a.stand.comparedTo(b.stand));
  const where = (east: number, north: number) => directionIn((east - west) / (across || 1), (north - south) / (along || 1));
  const length = (metres: number) => `${format.count(Math.round(metres / metresIn[areaUnit] / 10) * 10)} ${lengthUnit[areaUnit]}`;
  const scale = scaleOf(perMetre, format);
  const [thinnest, best] = [inOrder[0]!, inOrder[inOrder.length - 1]!];
  const thin = ground.filter(({ stand }) => isThin(stand)).length;
  const off = summary.counts.length - placed.length;
  const spot = ({ stand, east, north, count }: (typeof ground)[number]) =>
    `${plants(stand)} in the ${where(east, north)}${count.part === null ? "" : ` (${count.part.name})`}`;
  return {
    width,
    height: round(top + Math.max(along * perMetre, 1) + 52),
    marks: ground.map(({ stand, east, north }) => ({
      x: x(east),
      y: y(north),
      size: round(sizeOf(stand, fullest)),
      isThin: isThin(stand),
    })),
    names: namesOf(ground).map(({ name, east, north }) => ({
      words: name,
      x: Math.min(Math.max(x(east), 50), width - 50),
      y: y(north) - 12,
    })),
    scale,
    says:
      `Map of ${placed.length === 1 ? "one spot" : `${placed.length} spots`} counted in ${field.name}, north up` +
      (placed.length === 1
        ? `: ${plants(thinnest.stand)} plants per ${format.areaName}.`
        : `, ${length(across)} from west to east and ${length(along)} from south to north. Thinnest ${spot(thinnest)}, fullest ${spot(best)}.`) +
      (field.targetStand === null
        ? ""
        : ` ${thin === 0 ? "None is" : thin === 1 ? "One is" : `${thin} are`} under nine tenths of the target.`),
    caption:
      `The larger a mark, the more plants${field.targetStand === null ? "" : "; on its corner: under nine tenths of the target"}.` +
      (off === 0 ? "" : ` ${off === 1 ? "One spot has" : `${off} spots have`} no coordinates.`),
    rows: inOrder.map(({ count, stand, east, north }) => ({
      name: `${where(east, north)}${count.part === null ? "" : `, ${count.part.name}`}`,
      cells: [plants(stand), degreesWords(count.spot.latitude), degreesWords(count.spot.longitude)],
    })),
  };
}

const round = (value: number): number => Math.round(value * 10) / 10;

/** The width of a mark goes with the plants; the thinnest stays large enough to be seen. */
const sizeOf = (stand: PlantsPerArea, fullest: Decimal): number =>
  fullest.isZero() ? smallest : Math.max(smallest, largest * Number(stand.div(fullest)));

/** The parts that have a name, each at the middle of its spots. */
function namesOf(ground: readonly { readonly count: Placed; readonly east: number; readonly north: number }[]) {
  const names = [...new Set(ground.flatMap(({ count }) => count.part?.name ?? []))];
  return names.map((name) => {
    const of = ground.filter(({ count }) => count.part?.name === name);
    const mean = (values: readonly number[]) => values.reduce((all, each) => all + each, 0) / values.length;
    return { name, east: mean(of.map(({ east }) => east)), north: Math.max(...of.map(({ north }) => north)) };
  });
}

/** One of nine places in a field, each of its sides cut in three. */
function directionIn(east: number, north: number): string {
  const third = (value: number) => (value < 1 / 3 ? 0 : value > 2 / 3 ? 2 : 1);
  const [down, across] = [["south", "", "north"][third(north)]!, ["west", "", "east"][third(east)]!];
  return down + across === "" ? "middle" : down + across;
}

/** A round length that fits under the map: 1, 2 or 5 and noughts. */
function scaleOf(perMetre: number, { areaUnit, count }: Format): SpotMap["scale"] {
  const perUnit = perMetre * metresIn[areaUnit];
  const most = mostAcross * 0.4;
  const lengths = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000];
  const length = lengths.findLast((each) => each * perUnit <= most) ?? lengths[0]!;
  return { length: round(length * perUnit), words: `${count(length)} ${lengthUnit[areaUnit]}` };
}

const degreesWords = (degrees: Decimal): string => degrees.toFixed(decimalsOfDegrees).replace("-", "−");
