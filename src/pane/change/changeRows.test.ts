/** What is saved from the pane reads back from the table as it was. */
import { describe, expect, it } from "vitest";
import { contentFromText } from "../../../tests/support/tableFromText";
import { Decimal } from "../../core/numbers/decimal";
import { isCapital, quadrants, type Change, type ChangeLine } from "../../core/partialBudget/change";
import { grainOf } from "../../core/partialBudget/grain";
import { money, yearlyRate, years } from "../../core/numbers/units";
import { seasonReport } from "../../workbook/report";
import { changeRows } from "./changeRows";

const farm = `Season
| Setting | Value |
| Operating interest rate | 8% |
| Interest months | 6 |
Crops
| Crop | Expected price |
| Corn | 4.40 |
Fields
| Field | Crop | Acres | Yield goal | Rent per acre |
| Alder | Corn | 120 | 200 | 150 |
`;
const { figures } = seasonReport(contentFromText(farm));
const grain = grainOf(figures.crops[0]!.outlook);

/** The change as it comes back from the rows that it was saved as. */
function readBack(change: Change, acres: Decimal | null, countedIn: boolean) {
  const rows = changeRows({ change, name: "Saved", layout: "Own or hire", target: "Alder", acres, countedIn, areaUnit: "ac", grain });
  const headings = [...new Set(rows.flatMap((row) => [...row.keys()]))];
  const cells = rows.map(
    (row) =>
      `| ${headings
        .map((heading) => {
          const value = row.get(heading);
          return value instanceof Decimal ? value.toFixed() : String(value ?? "");
        })
        .join(" | ")} |`,
  );
  const { season, problems } = seasonReport(contentFromText(`${farm}Changes\n| ${headings.join(" | ")} |\n${cells.join("\n")}\n`));
  return { problems: problems.map(({ code, at }) => `${code} ${at.column ?? ""}`), change: season.changes![0]! };
}

const plainLine = ({
  quadrant,
  item,
  quantity,
  unit,
  price,
  basis,
  yearsKept,
  salvage,
}: ChangeLine | ReturnType<typeof readBack>["change"]["lines"][number]) => [
  quadrant,
  item,
  quantity?.toFixed() ?? null,
  unit,
  price instanceof Decimal ? price.toFixed() : null,
  basis,
  yearsKept?.toFixed() ?? null,
  salvage === null || salvage.isZero() ? null : salvage.toFixed(),
];

describe("a saved change", () => {
  const wheels = (rate: string): Change => ({
    name: "Saved",
    area: figures.crops[0]!.outlook.area,
    rate: yearlyRate(rate),
    lines: [
      {
        quadrant: "added costs",
        item: "Wheels",
        quantity: new Decimal("16"),
        unit: "row",
        price: money("300"),
        basis: "lump sum",
        yearsKept: years("5"),
        salvage: null,
        source: null,
      },
    ],
  });

  it.each(["0", "0.004", "0.01", "0.065", "0.4", "0.41", "0.5", "0.999", "1", "1.2"])(
    "bears the rate %s when it is read again, and nothing is to fix",
    (rate) => {
      const { problems, change } = readBack(wheels(rate), null, false);
      expect([problems, change.rate.toFixed()]).toEqual([[], rate]);
    },
  );

  it("reads back line by line, whatever is entered (200 of them)", () => {
    let seed = 20311;
    const next = (below: number) => {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      return Math.floor((seed / 2147483648) * below);
    };
    const digits = () => new Decimal(next(1_000_000)).div(["1", "100", "10000"][next(3)]!);
    for (let round = 0; round < 200; round++) {
      const lines = Array.from({ length: 1 + next(4) }, (_, index): ChangeLine => {
        const kept = next(3) === 0;
        return {
          quadrant: quadrants[next(quadrants.length)]!,
          item: `Item ${index}`,
          quantity: digits(),
          unit: "piece",
          price: money(digits()),
          basis: kept ? "lump sum" : (["per acre", "per year", "lump sum"] as const)[next(3)]!,
          yearsKept: kept ? years(new Decimal(1 + next(20))) : null,
          salvage: kept && next(2) === 0 ? money(digits()) : null,
          source: null,
        };
      });
      const change: Change = {
        name: "Saved",
        area: figures.crops[0]!.outlook.area,
        rate: yearlyRate(new Decimal(next(1300)).div("1000")),
        lines,
      };
      const acres = next(2) === 0 ? null : new Decimal(1 + next(120));
      const countedIn = next(2) === 0;
      const read = readBack(change, acres, countedIn);
      const where = `round ${round}`;
      expect(read.problems, where).toEqual([]);
      expect(read.change.lines.map(plainLine), where).toEqual(lines.map(plainLine));
      expect([read.change.countedIn, read.change.area.toFixed(), read.change.layout], where).toEqual([
        countedIn,
        (acres ?? new Decimal("120")).toFixed(),
        "Own or hire",
      ]);
      if (lines.some(isCapital)) expect(read.change.rate.toFixed(), where).toEqual(change.rate.toFixed());
    }
  });
});
