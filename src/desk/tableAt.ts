import { contains, type At } from "../host/address";
import type { DeskSheet, GridTable } from "./gridBook";

/** The table that a cell is in, or right under, where its next entry begins. */
export const tableAt = ({ tables }: Pick<DeskSheet, "tables">, at: At): GridTable | undefined =>
  tables.find(({ block }) => contains({ ...block, bottom: block.bottom + 1 }, at));
