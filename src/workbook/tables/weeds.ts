/** The table Weeds: one weed in one field or crop a row. */
import { plainWeed, sitesIn } from "../../core/weeds/sites";
import type { WeedEntry } from "../../core/weeds/weedEntry";
import { weedColumns } from "../columns/weeds";
import type { TableReader } from "../tableReader";
import type { ColumnAt, Row } from "../tableRow";
import { needsTarget, targetOf, type TargetPlaces } from "./targets";

const { weed: weedColumn, resistantTo: resistantColumn, seenOn, note } = weedColumns.columns;

export function readWeeds(table: TableReader, places: TargetPlaces): readonly WeedEntry[] {
  if (!needsTarget(table) || !table.needs(weedColumn)) return [];
  const seen = new Map<string, Row>();
  return table.rows(
    (row): WeedEntry | null => {
      const target = targetOf(row, table, places);
      const weed = row.need(weedColumn);
      const resistantTo = sitesOf(row, resistantColumn);
      const [on, noted] = [row.of(seenOn), row.of(note)];
      if (target === null || weed === null) return null;
      const key = `${"field" in target ? `field ${target.field}` : `crop ${target.crop}`}\n${plainWeed(weed)}`;
      const first = seen.get(key);
      if (first === undefined) seen.set(key, row);
      else row.fault("weed-twice", weedColumn, { other: first.source });
      return { target, weed, resistantTo, seenOn: on, note: noted, source: row.source };
    },
    () => [{ of: "weeds" }],
  );
}

/** Words between numbers that mean nothing by themselves. */
const betweenWords = /^(and|or|groups?|grp|sites?|hrac|wssa|none|no|of|action)$/i;

/** The sites in a cell; notes what is no number of a site, such as a date that Excel made of 9/14. */
function sitesOf(row: Row, column: ColumnAt): readonly string[] {
  const typed = row.text(column);
  if (typed === null) return [];
  const unread = typed.split(/[\s,;/+&]+/).filter((word) => word !== "" && !betweenWords.test(word) && sitesIn(word).length === 0);
  if (unread.length > 0) row.fault("not-sites", column, { found: typed, like: unread.join(", ") });
  return sitesIn(typed);
}
