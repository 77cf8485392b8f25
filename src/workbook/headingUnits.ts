/**
 * Units that a heading names: numbers under "Area (ha)", "Price (cents)" or "Yield (t/ha)" are not what they are read as, unless
 * the season counts so.
 */
import type { AreaUnit, YieldUnit } from "../core/numbers/units";
import type { RawTable } from "./cell";
import { columnUnits, type ColumnUnit } from "./columns/columnUnit";
import { headingsOf } from "./headings";
import { unitOfColumn } from "./unitOfColumn";
import type { Problem } from "./problem";
import type { TableName } from "./tableNames";
import { plainHeading } from "./words";

/** What a unit measures, and its one spelling. */
type Unit = { readonly of: "area" | "crop" | "money" | "scale" | "length" | "speed" | "power" | "volume" | "time"; readonly name: string };
const named = (of: Unit["of"], spellings: Readonly<Record<string, string>>) =>
  Object.entries(spellings).flatMap(([name, words]) => words.split(" ").map((word) => [word, { of, name }] as const));
const units: ReadonlyMap<string, Unit> = new Map([
  ...named("area", { acres: "ac acre acres", hectares: "ha hectare hectares" }),
  ...named("crop", {
    bu: "bu bushel bushels",
    t: "t tonne tonnes mt",
    ton: "ton tons",
    lb: "lb lbs pound pounds",
    cwt: "cwt",
    kg: "kg kgs",
    "100 kg": "q dt quintal quintals",
  }),
  ...named("money", { cents: "c ct cent cents ¢" }),
  ...named("scale", { thousands: "k 000 000s '000 1000 1000s x1000 thousand thousands $000 $k k$ $1000", millions: "million millions" }),
  ...named("length", {
    inches: 'in inch inches "',
    centimetres: "cm centimetre centimetres centimeter centimeters",
    feet: "ft feet foot",
    metres: "m metre metres meter meters",
    millimetres: "mm",
  }),
  ...named("speed", { "miles an hour": "mph", "kilometres an hour": "kph kmh" }),
  ...named("power", { horsepower: "hp", kilowatts: "kw" }),
  ...named("volume", { gallons: "gal gals gallon gallons", litres: "l litre litres liter liters" }),
  ...named("time", { hours: "h hr hrs hour hours", minutes: "min mins minute minutes" }),
]);

/** The units of a heading before and behind the stroke: `$/ac`, `bu per acre`. Outside brackets a letter alone is no unit. */
function said(heading: string, isMatched: boolean): { readonly over: readonly Unit[]; readonly under: readonly Unit[] } {
  const inside = (/[([]([^)\]]*)[)\]]/.exec(heading)?.[1] ?? "").toLowerCase();
  const outside = heading.replace(/[([][^)\]]*[)\]]/g, " ").toLowerCase();
  const words = (text: string, isShort: boolean) =>
    text
      .replace(/km\/h/g, "kph")
      .replace(/\s*(\/|\bper\b)\s*/g, " /")
      .split(/[\s,;:_]+/)
      .filter(
        (word, index, all) =>
          word !== "" &&
          (isShort ||
            word.startsWith("/") ||
            all[index + 1]?.startsWith("/") ||
            (word.length > 1 && (word !== "in" || index === all.length - 1))),
      );
  const all = [
    ...words(inside, true),
    ...(isMatched ? words(outside, false) : words(outside, false).filter((word) => /^(hectares?|ha)$/.test(word))),
  ];
  const known = (list: readonly string[]) => list.flatMap((word) => units.get(word) ?? units.get(word.replace(/^\p{Sc}/u, "")) ?? []);
  return {
    over: known(all.filter((word) => !word.startsWith("/"))),
    under: known(all.filter((word) => word.startsWith("/")).map((word) => word.slice(1))),
  };
}

export type Around = { readonly areaUnit: AreaUnit; readonly yieldUnits: readonly YieldUnit[] };

/** What a heading says of its unit that the season does not count in; `null` where it agrees or says nothing. */
function strangeUnit(heading: string, unit: ColumnUnit | null, isMatched: boolean, { areaUnit, yieldUnits }: Around): string | null {
  const read = unit === null ? undefined : columnUnits[unit].headed;
  const { over, under } = said(heading, isMatched);
  const own = areaUnit === "ac" ? "acres" : "hectares";
  // Where the season counts in hectares, a ton is a tonne.
  const crop = ({ name }: Unit) => (name === "ton" && areaUnit === "ha" ? "t" : name);
  const otherCrop = (unit: Unit) => unit.of === "crop" && yieldUnits.some((each) => crop({ of: "crop", name: each }) !== crop(unit));
  const area = [...over, ...under].find(({ of, name }) => of === "area" && name !== own);
  if (area !== undefined) return `${area.name}, and the season counts in ${own}`;
  const money = over.find(({ of }) => of === "money" || of === "scale");
  if (money !== undefined && read?.over === "money") return `${money.name}, and money is read in whole units of the currency`;
  if (money?.of === "scale" && read?.over === "count") return `${money.name}, and plants and seeds are read one by one`;
  const yields = [...(read?.over === "crop" ? over : []), ...(read?.under === "crop" ? under : [])].find(otherCrop);
  if (yields !== undefined) return `${yields.name}, and a crop is counted in ${yieldUnits.find((each) => each !== yields.name)!}`;
  const counted = read?.in?.[areaUnit === "ac" ? 0 : 1];
  const other = over.find(({ of, name }) => of === read?.over && counted !== undefined && name !== counted);
  return other === undefined ? null : `${other.name}, and it is read in ${counted!}`;
}

/** Headings that name a unit in which the season does not count: their numbers are not what they are read as. */
export function headingUnits(name: TableName, { headers, called }: RawTable, around: Around): readonly Problem[] {
  const ours = new Map(headingsOf(name).map((heading) => [plainHeading(heading), heading]));
  return headers.flatMap((found, index): readonly Problem[] => {
    const known = ours.get(plainHeading(found));
    const own = called?.[index] ?? found;
    const isMatched = plainHeading(own.replace(/[([][^)\]]*[)\]]/g, "")) !== plainHeading(known ?? "");
    const like = known === undefined ? null : strangeUnit(own, unitOfColumn(name, known), isMatched, around);
    return like === null ? [] : [{ code: "heading-unit", at: { table: name, column: found }, found: own, like, touches: [{ of: "farm" }] }];
  });
}

/** Headings that would be ours but for a unit without brackets, `Proven yield bu/ac`, where the table has not ours as well. */
export function headingsBesideUnits(name: TableName, { headers }: RawTable): readonly Problem[] {
  const ours = headingsOf(name);
  const there = headers.map(plainHeading);
  return headers.flatMap((found, index): readonly Problem[] => {
    if (ours.some((each) => plainHeading(each) === there[index])) return [];
    const like = ours.find(
      (each) =>
        !there.includes(plainHeading(each)) && found.toLowerCase().startsWith(`${each.toLowerCase()} `) && isUnit(found.slice(each.length)),
    );
    return like === undefined
      ? []
      : [{ code: "column-unread", at: { table: name, column: found }, found, like, touches: [{ of: "farm" }] }];
  });
}

const isUnit = (text: string): boolean => {
  const { over, under } = said(`(${text})`, false);
  return over.length + under.length > 0;
};
