import type { EmbeddedWorkbook } from "../../src/host/embedded";
import { areaName, cellName } from "../../src/host/address";
import { bookOf, sheetDataOf, sheetPosition } from "../../src/host/embedded/book";
import { choiceLists } from "../../src/host/embedded/sheet/choices";
import { lookOf } from "../../src/host/embedded/sheet/looks";
import { relationshipsOf, isOfType } from "../../src/host/embedded/package/packageParts";
import { textOf } from "../../src/host/embedded/package/xml";
import type { Snapshot } from "../host/fixture";

/** What an embedded workbook holds, from the parts that it would save. */
export function embeddedSnapshot(workbook: EmbeddedWorkbook): Snapshot {
  const parts = workbook.parts();
  const book = bookOf(parts);
  const shown = new Map(workbook.sheets().map((sheet) => [sheet.name, sheet]));
  const sheets = book.sheets.map(({ name, part }) => {
    const data = sheetDataOf(parts, part);
    const look = lookOf(data);
    const cells = data.rows.numbers().flatMap((row) =>
      data.rows.get(row)!.cells.flatMap(({ column, value, formula }) => {
        if (value === "" && formula === undefined) return [];
        const cell = workbook.cellAt(name, { row, column });
        return [
          [
            cellName({ row, column }),
            {
              value: cell.value,
              numberFormat: cell.numberFormat,
              bold: cell.bold,
              ...(cell.formula === null ? {} : { formula: `=${cell.formula}` }),
            },
          ] as const,
        ];
      }),
    );
    const titles = book.names.find((each) => each.name === "_xlnm.Print_Titles" && each.sheet === sheetPosition(parts, name))?.refersTo;
    const drawing = relationshipsOf(parts, part).find((each) => isOfType(each, "drawing"));
    const charts =
      drawing === undefined
        ? []
        : relationshipsOf(parts, drawing.target).map(({ target }) => {
            const xml = textOf(parts.get(target)!);
            return { title: /<a:t>([^<]*)<\/a:t>/.exec(xml)?.[1] ?? "", series: (xml.match(/<c:ser>/g) ?? []).length };
          });
    return {
      name,
      cells: Object.fromEntries(cells),
      tables: shown.get(name)!.tables.map((table) => ({ name: table.name, range: areaName(table.area) })),
      merges: look.merges.map(areaName),
      columnWidths: [...look.widths.values()],
      frozenRows: look.frozenRows,
      titleRows: titles === undefined ? null : /\$(\d+:)\$(\d+)$/.exec(titles)!.slice(1).join(""),
      orientation: /<pageSetup[^>]*orientation="landscape"/.test(data.after) ? ("landscape" as const) : ("portrait" as const),
      titleColumns:
        /\$([A-Z]+:)\$([A-Z]+),/
          .exec(titles ?? "")
          ?.slice(1)
          .join("") ?? null,
      pagesWide: /<pageSetUpPr[^>]*fitToPage="1"/.test(data.before)
        ? Number(/<pageSetup[^>]*fitToWidth="(\d+)"/.exec(data.after)?.[1] ?? "1")
        : null,
      charts,
      choices: choiceLists(data).map(({ areas, source }) => ({
        cell: cellName({ row: areas[0]!.top, column: areas[0]!.left }),
        words: source.replaceAll('"', "").split(","),
      })),
    };
  });
  const picked = workbook.selected;
  return {
    sheets,
    selected: picked === null ? null : { sheet: picked.sheet, cell: cellName({ row: picked.area.top, column: picked.area.left }) },
  };
}
