/** The table Fields. */
import { one, type Decimal } from "../../core/numbers/decimal";
import type { FlexibleRent } from "../../core/flexibleRent";
import type { Field, Tenure } from "../../core/season";
import { area, moneyPerArea, share, yieldPerArea } from "../../core/numbers/units";
import type { Named } from "../columns/column";
import { fieldColumns } from "../columns/fields";
import type { Problem } from "../problem";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { nearest } from "../words";

const { columns } = fieldColumns;

export function readFields(table: TableReader, names: Names, crops: Names): readonly Field[] {
  if (!table.hasNeeded(fieldColumns)) return [];
  const fields = table.rows(
    (row): Field | null => {
      const name = names.define(row, columns.field);
      const crop = row.needName(columns.crop, crops);
      const acres = row.need(columns.acres);
      const goal = row.need(columns.yieldGoal);
      const proven = row.of(columns.provenYield);
      const land = landOf(row);
      if (name === null || crop === null || acres === null || goal === null) return null;
      return {
        name,
        crop,
        area: area(acres),
        yieldGoal: yieldPerArea(goal),
        provenYield: proven === null ? null : yieldPerArea(proven),
        provenYears: [],
        variety: row.of(columns.variety),
        plannedPlanting: row.of(columns.plannedPlanting),
        planted: row.of(columns.planted),
        seedsDropped: row.of(columns.seedsDropped),
        targetStand: row.of(columns.targetStand),
        rowWidth: row.of(columns.rowWidth),
        uniformityLoss: row.of(columns.uniformityLoss)?.times("100") ?? null,
        weatherPlace: row.of(columns.weatherPlace),
        harvestDone: row.of(columns.harvestDone),
        sameLandAs: row.of(columns.sameLandAs),
        ...land,
        source: row.source,
      };
    },
    (row) => {
      const name = names.spelled(String(row.cell(columns.field)));
      // A field that is left out changes what every other field bears of shared costs.
      return name === null || row.lost ? [{ of: "farm" }] : [{ of: "field", name }];
    },
  );
  return onSharedLand(fields, table, names);
}

/**
 * Puts the table's own spelling to the fields that lend their land; what names no other field, or a field that has no land of its
 * own, is told.
 */
function onSharedLand(fields: readonly Field[], table: TableReader, names: Names): readonly Field[] {
  const byName = new Map(fields.map((field) => [field.name, field]));
  return fields.map((field) => {
    const typed = field.sameLandAs;
    if (typed === null) return field;
    const name = names.spelled(typed);
    const fault = (problem: Pick<Problem, "code" | "like">) => {
      table.problems.push({
        ...problem,
        at: { table: field.source.table, row: field.source.row, column: columns.sameLandAs.heading },
        found: typed,
        touches: [{ of: "farm" }],
      });
    };
    const like = nearest(typed, names.all);
    if (name === null) fault({ code: "unknown-name", ...(like === null ? {} : { like }) });
    else if (name === field.name) fault({ code: "same-land", like: "a field cannot lie on itself" });
    else if ((byName.get(name)?.sameLandAs ?? null) !== null) fault({ code: "same-land", like: `${name} has no land of its own either` });
    // The row of a field that could not be read is told there.
    else if (byName.has(name)) return { ...field, sameLandAs: name };
    return { ...field, sameLandAs: null };
  });
}

type Land = Pick<Field, "tenure" | "rentPerArea" | "flexibleRent" | "landChargePerArea" | "operatorShare">;

/** How the land is held. A blank tenure follows from what is entered: a share, the terms of a flexible rent, a rent, or none. */
function landOf(row: Row): Land {
  const rent = row.of(columns.rent);
  const charge = row.of(columns.landCharge);
  const part = row.of(columns.operatorShare);
  const flexible = { gross: row.of(columns.baseGross), above: row.of(columns.shareAbove), most: row.of(columns.mostRent) };
  const terms = (
    [
      [columns.baseGross, flexible.gross],
      [columns.shareAbove, flexible.above],
      [columns.mostRent, flexible.most],
    ] as const
  ).flatMap(([column, value]) => (value === null || value.isZero() ? [] : [column]));
  const tenure = row.of(columns.tenure) ?? tenureBy(part, terms.length > 0, rent);
  const conflict = (column: Named, like: string, other: Named = columns.tenure) =>
    row.fault("tenure-conflict", column, { like, other: { ...row.source, column: other.heading } });
  const shared = part !== null && part.lt("1");
  const rentBeside = tenure === "crop share" && rent !== null && !rent.isZero();
  if (rentBeside)
    conflict(
      columns.rent,
      "the field is crop-shared, and a rent is entered; the share counts and the rent is left aside",
      columns.operatorShare,
    );
  if (tenure === "owned" && rent !== null && !rent.isZero()) conflict(columns.rent, "the field is owned, and a rent is entered");
  if (tenure !== "owned" && charge !== null && !charge.isZero())
    conflict(columns.landCharge, "the field is rented, and a charge for owned land is entered");
  if (tenure !== "crop share" && shared)
    conflict(
      columns.operatorShare,
      `the field is ${tenure === "owned" ? "owned" : "rented for cash"}, and the operator has only a share of the crop`,
    );
  if (tenure !== "flexible rent")
    for (const column of terms)
      conflict(column, `the field is ${heldAs[tenure]}, and a flexible rent is entered; only ${countedAs[tenure]} counts`);
  // The rent of land that grows two crops stands on one of their rows.
  const isElsewhere = row.of(columns.sameLandAs) !== null && terms.length === 0;
  const isRented = tenure === "cash rent" || tenure === "flexible rent";
  if (isRented && rent === null && !isElsewhere && !row.isFaulty(columns.rent)) row.fault("rent-missing", columns.rent);
  if (tenure === "crop share" && part === null && !row.isFaulty(columns.operatorShare)) row.fault("share-missing", columns.operatorShare);
  return {
    tenure,
    operatorShare: share(part ?? one),
    rentPerArea: rent === null || rentBeside ? null : moneyPerArea(rent),
    ...(tenure === "flexible rent" && !(isElsewhere && rent === null) && { flexibleRent: flexibleRentOf(row, rent, flexible) }),
    landChargePerArea: charge === null ? null : moneyPerArea(charge),
  };
}

const heldAs = { owned: "owned", "cash rent": "rented at a fixed cash rent", "crop share": "crop-shared" } as const;
const countedAs = { owned: "the land charge", "cash rent": "Rent per acre", "crop share": "the operator's share" } as const;

function tenureBy(part: Decimal | null, isFlexible: boolean, rent: Decimal | null): Tenure {
  if (part !== null && part.lt("1")) return "crop share";
  if (isFlexible) return "flexible rent";
  return rent !== null && !rent.isZero() ? "cash rent" : "owned";
}

/** The terms above the base rent; `null` where one is missing or they do not go together, and that is told. */
function flexibleRentOf(
  row: Row,
  base: Decimal | null,
  { gross, above, most }: Readonly<Record<"gross" | "above" | "most", Decimal | null>>,
): FlexibleRent | null {
  for (const [column, value] of [
    [columns.baseGross, gross],
    [columns.shareAbove, above],
  ] as const)
    if (value === null && !row.isFaulty(column)) row.fault("rent-terms-missing", column);
  if (most !== null && base !== null && most.lt(base)) {
    row.fault("most-rent-low", columns.mostRent, { like: base.toFixed(), other: { ...row.source, column: columns.rent.heading } });
    return null;
  }
  // A limit that cannot be read must not leave the rent without one in figures that look whole: it is told, and the base counts.
  if (gross === null || above === null || row.isFaulty(columns.mostRent)) return null;
  return { baseGross: moneyPerArea(gross), shareAbove: share(above), most: most === null ? null : moneyPerArea(most) };
}
