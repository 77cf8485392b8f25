/** The table Fields. */
import { one } from "../../core/decimal";
import type { Field, Tenure } from "../../core/season";
import { area, moneyPerArea, share, yieldPerArea } from "../../core/units";
import type { Problem } from "../problem";
import type { Names } from "../names";
import type { TableReader } from "../tableReader";
import type { Row } from "../tableRow";
import { nearest } from "../words";

export const tenures = ["owned", "cash rent", "crop share"] as const satisfies readonly Tenure[];

export function readFields(table: TableReader, names: Names, crops: Names): readonly Field[] {
  if (!table.needs("Field", "Crop", "Acres", "Yield goal")) return [];
  const fields = table.rows((row): Field | null => {
    const name = names.define(row, { heading: "Field" });
    const crop = row.needName("Crop", crops);
    const acres = row.needNumber("Acres", "above zero");
    const goal = row.needNumber("Yield goal");
    const proven = row.number("Proven yield");
    const land = landOf(row);
    if (name === null || crop === null || acres === null || goal === null) return null;
    return {
      name, crop, area: area(acres), yieldGoal: yieldPerArea(goal), provenYield: proven === null ? null : yieldPerArea(proven),
      variety: row.text("Hybrid or variety"), plannedPlanting: row.date("Planned planting date"), planted: row.date("Planted date"),
      seedsDropped: row.number("Seeds dropped"), targetStand: row.number("Target stand"), rowWidth: row.number("Row width", "above zero"),
      uniformityLoss: percentOf(row, "Uniformity loss"), weatherPlace: row.text("Weather place"), harvestDone: harvestDoneOf(row), sameLandAs: row.text("Same land as"), ...land, source: row.source,
    };
  }, (row) => {
    const name = names.spelled(String(row.cell("Field")));
    // A field that is left out changes what every other field bears of shared costs.
    return name === null || row.lost ? [{ of: "farm" }] : [{ of: "field", name }];
  });
  return onSharedLand(fields, table, names);
}

/** Yes, or the day of the last load; `null` where the harvest is still to come or under way. */
function harvestDoneOf(row: Row): Field["harvestDone"] {
  const typed = row.text("Harvest done");
  if (typed === null || /^(no|n|false)$/i.test(typed)) return null;
  if (/^(yes|y|true|done)$/i.test(typed)) return { on: null };
  const on = row.date("Harvest done");
  return on === null ? null : { on };
}

/** Puts the table's own spelling to the fields that lend their land; what names no other field, or a field that has no land of its own, is told. */
function onSharedLand(fields: readonly Field[], table: TableReader, names: Names): readonly Field[] {
  const byName = new Map(fields.map((field) => [field.name, field]));
  return fields.map((field) => {
    const typed = field.sameLandAs;
    if (typed === null) return field;
    const name = names.spelled(typed);
    const fault = (problem: Pick<Problem, "code" | "like">) => {
      table.problems.push({ ...problem, at: { table: field.source.table, row: field.source.row, column: "Same land as" }, found: typed, touches: [{ of: "farm" }] });
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

const percentOf = (row: Row, column: string) => row.share(column)?.times("100") ?? null;

/** How the land is held. A blank tenure follows from what is entered: a share, a rent, or neither. */
function landOf(row: Row): Pick<Field, "tenure" | "rentPerArea" | "landChargePerArea" | "operatorShare"> {
  const rent = row.number("Rent per acre");
  const charge = row.number("Land charge per acre");
  const part = row.share("Operator share of crop");
  const shared = part !== null && part.lt("1");
  const tenure = row.choice("Tenure", tenures) ?? (shared ? "crop share" : rent !== null && !rent.isZero() ? "cash rent" : "owned");
  const conflict = (column: string, like: string, other = "Tenure") => row.fault("tenure-conflict", column, { like, other: { ...row.source, column: other } });
  const rentBeside = tenure === "crop share" && rent !== null && !rent.isZero();
  if (rentBeside) conflict("Rent per acre", "the field is crop-shared, and a rent is entered; the share counts and the rent is left aside", "Operator share of crop");
  if (tenure === "owned" && rent !== null && !rent.isZero()) conflict("Rent per acre", "the field is owned, and a rent is entered");
  if (tenure !== "owned" && charge !== null && !charge.isZero()) conflict("Land charge per acre", "the field is rented, and a charge for owned land is entered");
  if (tenure !== "crop share" && shared) conflict("Operator share of crop", `the field is ${tenure === "owned" ? "owned" : "rented for cash"}, and the operator has only a share of the crop`);
  // The rent of land that grows two crops stands on one of their rows.
  if (tenure === "cash rent" && rent === null && row.text("Same land as") === null && !row.isFaulty("Rent per acre")) row.fault("rent-missing", "Rent per acre");
  if (tenure === "crop share" && part === null && !row.isFaulty("Operator share of crop")) row.fault("share-missing", "Operator share of crop");
  return {
    tenure, operatorShare: share(part ?? one),
    rentPerArea: rent === null || rentBeside ? null : moneyPerArea(rent), landChargePerArea: charge === null ? null : moneyPerArea(charge),
  };
}
