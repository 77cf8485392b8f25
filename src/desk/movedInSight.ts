import type { At } from "../host/address";
import { moved, type Extent, type KeyStroke, type Selection } from "./gridSelection";

/** Where a key takes the selection when some rows are out of sight: keys go by what is in sight. */
export function movedInSight(selection: Selection, stroke: KeyStroke, extent: Extent, rows: readonly number[] | null): Selection | null {
  if (rows === null) return moved(selection, stroke, extent);
  const { first } = extent;
  const place = (row: number) =>
    first.row +
    Math.max(
      rows.findLastIndex((each) => each <= row),
      0,
    );
  const [inSight, onSheet] = [
    (at: At): At => ({ ...at, row: place(at.row) }),
    (at: At): At => ({ ...at, row: rows[at.row - first.row] ?? at.row }),
  ];
  const { active, anchor, corner } = selection;
  const next = moved({ ...selection, active: inSight(active), anchor: inSight(anchor), corner: inSight(corner) }, stroke, {
    ...extent,
    rows: first.row + rows.length,
    used: { ...extent.used, rows: first.row + rows.length },
    isFilled: (at) => extent.isFilled(onSheet(at)),
  });
  return next === null ? null : { ...next, active: onSheet(next.active), anchor: onSheet(next.anchor), corner: onSheet(next.corner) };
}
