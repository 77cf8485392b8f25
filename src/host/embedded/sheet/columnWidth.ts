import { lookOf } from "./looks";
import { attribute } from "../package/attribute";
import { dataOf, sheetNamed, type State } from "../state";

/** The state with another width of a column, in characters of the usual font. What else the file says of columns stays. */
export function withColumnWidth(state: State, sheet: string, column: number, width: number): State {
  const { part } = sheetNamed(state, sheet);
  const data = dataOf(state, part);
  const { prefix: p, before } = data;
  if (lookOf(data).widths.get(column) === width) return state;
  const number = column + 1;
  const own = (tag: string) => `<${p}col min="${number}" max="${number}"${rest(tag)} width="${width}" customWidth="1"/>`;
  const rest = (tag: string) =>
    [...tag.matchAll(/\s([\w:]+)="[^"]*"/g)]
      .filter(([, name]) => !["min", "max", "width", "customWidth", "bestFit"].includes(name!))
      .map(([whole]) => whole)
      .join("");
  const tags = [...before.matchAll(new RegExp(`<${p}col\\s[^>]*/>`, "g"))].map(([tag]) => tag);
  const split = tags.flatMap((tag) => {
    const [min, max] = [Number(attribute(tag, "min")), Number(attribute(tag, "max"))];
    if (number < min || number > max) return [{ min, tag }];
    const part = (from: number, to: number) => ({
      min: from,
      tag: tag.replace(/\smin="\d+"/, ` min="${from}"`).replace(/\smax="\d+"/, ` max="${to}"`),
    });
    return [
      ...(min < number ? [part(min, number - 1)] : []),
      { min: number, tag: own(tag) },
      ...(max > number ? [part(number + 1, max)] : []),
    ];
  });
  const all =
    split.some(({ min, tag }) => min === number && tag === own(tag)) ||
    tags.some((tag) => Number(attribute(tag, "min")) <= number && Number(attribute(tag, "max")) >= number)
      ? split
      : [...split, { min: number, tag: own("") }];
  const columns = `<${p}cols>${all
    .sort((one, other) => one.min - other.min)
    .map(({ tag }) => tag)
    .join("")}</${p}cols>`;
  const without = before.replace(new RegExp(`<${p}cols>[\\s\\S]*?</${p}cols>`), "");
  const next = without.replace(new RegExp(`<${p}sheetData`), `${columns}<${p}sheetData`);
  return { ...state, edited: new Map(state.edited).set(part, { ...data, before: next }), touched: true };
}
