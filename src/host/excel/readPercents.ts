/** How cells show their numbers, asked only of rates that a number alone does not tell. */
import type { RawTable } from "../../workbook/cell";
import { showsPercent, unclearRates } from "../../workbook/percentCells";
import type { Asked, TableSource } from "./sources";

type Percents = Pick<RawTable, "percents">;

/** Of each source the rates that show percent; a round trip more only where there is a rate to ask about. */
export async function readPercents(
  context: Excel.RequestContext,
  sources: readonly TableSource[],
  asked: readonly Asked[],
  raws: readonly (RawTable | null)[],
): Promise<readonly Percents[]> {
  const formats = raws.map((raw, index) => {
    if (raw === null) return [];
    const { name, isMatch } = sources[index]!;
    const { sheet } = asked[index]!;
    return unclearRates(isMatch ? null : name, raw).map((at) => ({
      at,
      cell: sheet
        .getRangeByIndexes(raw.body.row + at.row, raw.body.column + at.column, 1, 1)
        .untrack()
        .load("numberFormat"),
    }));
  });
  if (formats.every((each) => each.length === 0)) return raws.map(() => ({}));
  await context.sync();
  return formats.map((cells): Percents => {
    const percents = cells.filter(({ cell }) => showsPercent(String((cell.numberFormat as unknown[][])[0]?.[0] ?? ""))).map(({ at }) => at);
    return percents.length === 0 ? {} : { percents };
  });
}
