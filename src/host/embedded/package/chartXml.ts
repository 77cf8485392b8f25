/** Native charts of our sheets, as drawing and chart parts with the values they show now. */
import type { Cell } from "../../../workbook/cell";
import type { ChartModel } from "../../../workbook/resultSheet";
import { seriesColours } from "../../sheetLook";
import { columnName, parseArea, quotedSheet, type Block } from "../../address";
import { escapeAttribute, escapeText } from "./xml";

/** The value of a cell of the sheet, rows and columns from 0. */
export type CellAt = (row: number, column: number) => Cell;

const chart = "http://schemas.openxmlformats.org/drawingml/2006/chart";
const drawing = "http://schemas.openxmlformats.org/drawingml/2006/main";
const spreadsheetDrawing = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
const relationships = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** The drawing of a sheet: each chart in its place. `ids` are the relationships to the charts. */
export function drawingXml(charts: readonly ChartModel[], ids: readonly string[]): string {
  const anchors = charts.map((model, index) => {
    const from = areaOf(model.from);
    const to = areaOf(model.to);
    const corner = (name: string, column: number, row: number) =>
      `<xdr:${name}><xdr:col>${column}</xdr:col>` +
      `<xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row>` +
      `<xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
    return (
      `<xdr:twoCellAnchor>${corner("from", from.left, from.top)}${corner("to", to.right + 1, to.bottom + 1)}<xdr:graphicFrame ` +
      `macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${index + 2}" name="Chart ${index + 1}" descr="${escapeAttribute(model.title)}"/>` +
      '<xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>' +
      `<a:graphic><a:graphicData uri="${chart}"><c:chart xmlns:c="${chart}" r:id="${ids[index]!}"/></a:graphicData></a:graphic>` +
      "</xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>"
    );
  });
  return `${head}<xdr:wsDr xmlns:xdr="${spreadsheetDrawing}" xmlns:a="${drawing}" xmlns:r="${relationships}">${anchors.join("")}</xdr:wsDr>`;
}

/** One chart over cells of a sheet. */
export function chartXml(model: ChartModel, sheet: string, cell: CellAt): string {
  const series = model.series.map((each, index) => seriesXml(model, sheet, cell, each, index)).join("");
  const plot =
    model.kind === "column"
      ? `<c:barChart><c:barDir val="col"/><c:grouping val="clustered"/><c:varyColors val="0"/>${series}<c:gapWidth val="80"/><c:axId ` +
        'val="1"/><c:axId val="2"/></c:barChart>'
      : `<c:lineChart><c:grouping val="standard"/>` +
        `<c:varyColors val="0"/>${series}<c:marker val="1"/>` +
        `<c:axId val="1"/>` +
        `<c:axId val="2"/></c:lineChart>`;
  const axes =
    '<c:catAx><c:axId val="1"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="b"/>' +
    '<c:majorTickMark val="none"/><c:minorTickMark val="none"/><c:tickLblPos val="low"/><c:crossAx val="2"/></c:catAx>' +
    '<c:valAx><c:axId val="2"/><c:scaling><c:orientation val="minMax"/>' +
    `${model.startsAtZero === true ? '<c:min val="0"/>' : ""}</c:scaling>` +
    '<c:delete val="0"/><c:axPos val="l"/>' +
    '<c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="D9D9D9"/></a:solidFill></a:ln></c:spPr>' +
    '</c:majorGridlines><c:numFmt formatCode="[&gt;=1000]#,##0;[&lt;=-1000]-#,##0;General" sourceLinked="0"/><c:majorTickMark ' +
    'val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="nextTo"/><c:crossAx val="1"/></c:valAx>';
  return (
    `${head}<c:chartSpace xmlns:c="${chart}" xmlns:a="${drawing}" xmlns:r="${relationships}"><c:roundedCorners val="0"/><c:chart>` +
    '<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz="1100" b="1"/></a:pPr><a:r><a:rPr lang="en-US" sz="1100" ' +
    `b="1"/><a:t>${escapeText(model.title)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title><c:autoTitleDeleted ` +
    `val="0"/><c:plotArea><c:layout/>${plot}${axes}</c:plotArea><c:legend><c:legendPos val="b"/><c:overlay val="0"/></c:legend>` +
    '<c:plotVisOnly val="1"/><c:dispBlanksAs val="gap"/></c:chart><c:spPr><a:solidFill><a:srgbClr val="FFFFFF"/></a:solidFill>' +
    '</c:spPr><c:txPr><a:bodyPr/><a:lstStyle/><a:p><a:pPr><a:defRPr sz="900"/></a:pPr><a:endParaRPr lang="en-US"/></a:p></c:txPr>' +
    "</c:chartSpace>"
  );
}

function seriesXml(model: ChartModel, sheet: string, cell: CellAt, { name, values }: ChartModel["series"][number], index: number): string {
  const colour = seriesColours[index % seriesColours.length]!.slice(1);
  const look =
    model.kind === "column"
      ? `<c:spPr><a:solidFill><a:srgbClr val="${colour}"/></a:solidFill><a:ln w="6350"><a:solidFill><a:srgbClr val="404040"/>` +
        '</a:solidFill></a:ln></c:spPr><c:invertIfNegative val="0"/>'
      : `<c:spPr><a:ln w="22225"><a:solidFill>` +
        `<a:srgbClr val="${colour}"/>` +
        `</a:solidFill>${index % 2 === 1 ? '<a:prstDash val="dash"/>' : ""}</a:ln></c:spPr><c:marker><c:symbol val="none"/></c:marker>`;
  const categories = cellsOf(areaOf(model.categories), cell);
  const figures = cellsOf(areaOf(values), cell);
  const points = (all: readonly Cell[]) =>
    all.map((value, at) => (value === "" ? "" : `<c:pt idx="${at}"><c:v>${escapeText(String(value))}</c:v></c:pt>`)).join("");
  const numbers = figures.map((value) => (typeof value === "number" ? value : ""));
  return (
    `<c:ser><c:idx val="${index}"/><c:order val="${index}"/><c:tx><c:v>${escapeText(name)}</c:v></c:tx>${look}<c:cat><c:strRef><c:f>` +
    `${escapeText(formulaOf(sheet, model.categories))}</c:f><c:strCache><c:ptCount val="${categories.length}"/>` +
    `${points(categories)}</c:strCache></c:strRef></c:cat><c:val><c:numRef><c:f>${escapeText(formulaOf(sheet, values))}</c:f>` +
    `<c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="${figures.length}"/>${points(numbers)}</c:numCache></c:numRef>` +
    `</c:val>${model.kind === "line" ? '<c:smooth val="0"/>' : ""}</c:ser>`
  );
}

function cellsOf({ top, left, bottom, right }: Block, cell: CellAt): readonly Cell[] {
  const cells: Cell[] = [];
  for (let row = top; row <= bottom; row += 1) for (let column = left; column <= right; column += 1) cells.push(cell(row, column));
  return cells;
}

function areaOf(text: string): Block {
  const area = parseArea(text);
  if (area === null) throw new RangeError(`a chart of ours has no such range: ${text}`);
  return area;
}

function formulaOf(sheet: string, text: string): string {
  const { top, left, bottom, right } = areaOf(text);
  return `${quotedSheet(sheet)}!$${columnName(left)}$${top + 1}:$${columnName(right)}$${bottom + 1}`;
}
