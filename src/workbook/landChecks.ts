/** Land that grows two crops in one year: acres, rent and passes that do not fit on it. */
import { sum } from "../core/numbers/decimal";
import { accounts } from "../core/accounts";
import type { Field, Season } from "../core/season";
import { afterHarvest } from "../core/seasonWork";
import type { Named } from "./columns/column";
import { fieldColumns } from "./columns/fields";
import type { Problem } from "./problem";

const { columns } = fieldColumns;

export function landProblems(season: Season): readonly Problem[] {
  const second = season.fields.filter(({ sameLandAs }) => sameLandAs !== null);
  if (second.length === 0) return [];
  const byName = new Map(season.fields.map((field) => [field.name, field]));
  return [
    ...second.flatMap((field) => fit(field, byName.get(field.sameLandAs!)!, second)),
    ...oneCropOnly(season.fields, second),
    ...nextCropHere(season, second),
  ];
}

/** A flexible rent goes by the crop of its own row: what another crop grosses on the same land moves it not. */
const oneCropOnly = (fields: readonly Field[], second: readonly Field[]): readonly Problem[] =>
  fields
    .filter(
      ({ flexibleRent, name, sameLandAs }) => flexibleRent && (sameLandAs !== null || second.some((each) => each.sameLandAs === name)),
    )
    .map((field) => ({
      code: "flexible-rent-one-crop",
      at: { table: field.source.table, row: field.source.row, column: columns.tenure.heading },
      found: field.name,
      like: field.crop,
      touches: [{ of: "field", name: field.name }],
    }));

function fit(field: Field, land: Field, second: readonly Field[]): readonly Problem[] {
  const problem = ({ heading: column }: Named, found: string, like: string): Problem => ({
    code: "same-land",
    at: { table: field.source.table, row: field.source.row, column },
    found,
    like,
    touches: [{ of: "farm" }],
  });
  const onIt = second.filter(({ sameLandAs }) => sameLandAs === land.name);
  const acres = sum(onIt.map(({ area }) => area));
  const rents = (of: Field) => [of.rentPerArea, of.landChargePerArea].some((rent) => rent !== null && !rent.isZero());
  const problems: Problem[] = [];
  if (field === onIt.at(-1) && acres.gt(land.area))
    problems.push(
      problem(columns.acres, acres.toFixed(), `second crops on ${acres.toFixed()} acres of ${land.name}, which has ${land.area.toFixed()}`),
    );
  if (rents(field) && [land, ...onIt.filter((each) => each !== field)].some(rents)) {
    problems.push(
      problem(
        field.rentPerArea === null ? columns.landCharge : columns.rent,
        field.name,
        `the land of ${land.name} is charged on more than one row`,
      ),
    );
  }
  if (land.tenure === "crop share" && field.tenure !== "crop share")
    problems.push(
      problem(
        columns.operatorShare,
        field.name,
        `the land of ${land.name} is crop-shared, and no share of this crop is entered; all of it is counted as the operator's`,
      ),
    );
  return problems;
}

/** Passes of a field after its last load, where another crop of this season uses its land next: their money would be in neither. */
function nextCropHere(season: Season, second: readonly Field[]): readonly Problem[] {
  const next = new Map(second.map((field) => [field.sameLandAs!, field.name]));
  const last = new Map(
    accounts(season).facts.flatMap(({ field, harvested }) =>
      harvested !== null && next.has(field.name) ? [[field.name, harvested.weighed.last] as const] : [],
    ),
  );
  if (last.size === 0) return [];
  const kindOf = new Map(season.items.map(({ name, kind }) => [name, kind]));
  const rows = [...season.applications.map((row) => ({ ...row, kind: kindOf.get(row.item)! })), ...season.operations];
  return rows.flatMap(({ target, date, kind, source }): readonly Problem[] => {
    const field = "field" in target ? target.field : "";
    const end = last.get(field);
    if (end === undefined || date === null || date <= end || afterHarvest.has(kind)) return [];
    return [
      {
        code: "next-crop-here",
        at: { table: source.table, row: source.row },
        found: field,
        like: next.get(field)!,
        touches: [
          { of: "field", name: field },
          { of: "field", name: next.get(field)! },
        ],
      },
    ];
  });
}
