/** What an entry is over: a field, a crop for all its fields, or all of them. */
import type { Target } from "./row";
import type { Field, OtherCost } from "./season";

/** Whether a row of one field, of a crop or of all reaches a field. */
export const isOver = (over: Target | OtherCost["over"], field: Pick<Field, "name" | "crop">): boolean =>
  "all" in over ? true : "field" in over ? field.name === over.field : field.crop === over.crop;
