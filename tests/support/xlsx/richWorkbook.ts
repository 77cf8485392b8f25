/**
 * A workbook with everything that a grower may have in one, written part by part as Excel writes them: nothing of it may be
 * lost when a cell is changed. Everything in it is invented.
 */
import { strToU8, zipSync } from "fflate";

const spreadsheet = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\r\n';
const main = `xmlns="${spreadsheet}" xmlns:r="${office}"`;

const relationships = (...entries: readonly (readonly [type: string, target: string, mode?: string])[]): string =>
  `${head}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${entries
    .map(
      ([type, target, mode], index) =>
        `<Relationship Id="rId${index + 1}" Type="${type.includes(":") ? type : `${office}/${type}`}" ` +
        `Target="${target}"${mode === undefined ? "" : ` TargetMode="${mode}"`}/>`,
    )
    .join("")}</Relationships>`;

const sheetType = (name: string) => `application/vnd.openxmlformats-officedocument.spreadsheetml.${name}+xml`;
const types: Readonly<Record<string, string>> = {
  "xl/workbook.xml": sheetType("sheet.main"),
  "xl/worksheets/sheet1.xml": sheetType("worksheet"),
  "xl/worksheets/sheet2.xml": sheetType("worksheet"),
  "xl/worksheets/sheet3.xml": sheetType("worksheet"),
  "xl/styles.xml": sheetType("styles"),
  "xl/sharedStrings.xml": sheetType("sharedStrings"),
  "xl/tables/table1.xml": sheetType("table"),
  "xl/comments1.xml": sheetType("comments"),
  "xl/calcChain.xml": sheetType("calcChain"),
  "xl/pivotCache/pivotCacheDefinition1.xml": sheetType("pivotCacheDefinition"),
  "xl/pivotCache/pivotCacheRecords1.xml": sheetType("pivotCacheRecords"),
  "xl/pivotTables/pivotTable1.xml": sheetType("pivotTable"),
  "xl/externalLinks/externalLink1.xml": sheetType("externalLink"),
  "xl/theme/theme1.xml": "application/vnd.openxmlformats-officedocument.theme+xml",
  "xl/drawings/drawing1.xml": "application/vnd.openxmlformats-officedocument.drawing+xml",
  "xl/charts/chart1.xml": "application/vnd.openxmlformats-officedocument.drawingml.chart+xml",
  "customXml/itemProps1.xml": "application/vnd.openxmlformats-officedocument.customXmlProperties+xml",
  "docProps/app.xml": "application/vnd.openxmlformats-officedocument.extended-properties+xml",
  "docProps/core.xml": "application/vnd.openxmlformats-package.core-properties+xml",
};

const strings = [
  "<si><t>Item</t></si>",
  "<si><t>Quantity</t></si>",
  "<si><t>Price</t></si>",
  "<si><t>Amount</t></si>",
  '<si><r><t xml:space="preserve">Seed, </t></r><r><rPr><b/></rPr><t>early</t></r></si>',
  '<si><t>燃料</t><rPh sb="0" eb="2"><t>ネンリョウ</t></rPh></si>',
  "<si><t>Total</t></si>",
  '<si><t xml:space="preserve"> two_x000D_\nlines </t></si>',
  "<si><t>_x005F_x0041_</t></si>",
  "<si><t/></si>",
];

const bills =
  `${head}<worksheet ${main} ` +
  `xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main" ` +
  `xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main">` +
  '<sheetPr><tabColor rgb="FF7F7F7F"/><pageSetUpPr fitToPage="1"/></sheetPr><dimension ref="A1:H12"/>' +
  '<sheetViews><sheetView tabSelected="1" ' +
  'workbookViewId="0"><pane ySplit="3" topLeftCell="A4" ' +
  'activePane="bottomLeft" state="frozen"/><selection pane="bottomLeft" activeCell="B5" sqref="B5"/></sheetView></sheetViews>' +
  '<sheetFormatPr defaultRowHeight="15" ' +
  'x14ac:dyDescent="0.25" ' +
  'xmlns:x14ac="http://schemas.microsoft.com/office/spreadsheetml/2009/9/ac"/>' +
  '<cols><col min="1" max="1" ' +
  'width="24.5" customWidth="1"/><col min="3" max="4" ' +
  'width="11" style="1" customWidth="1"/></cols><sheetData>' +
  '<row r="1" spans="1:8" ht="21" customHeight="1"><c r="A1" s="2" t="inlineStr"><is><t>Bills &amp; more</t></is></c></row>' +
  '<row r="3" spans="1:8"><c r="A3" s="2" t="s"><v>0</v>' +
  '</c><c r="B3" s="2" t="s"><v>1</v></c><c r="C3" ' +
  's="2" t="s">' +
  '<v>2</v></c><c r="D3" s="2" t="s"><v>3</v></c></row>' +
  '<row r="4" spans="1:8"><c r="A4" t="s"><v>4</v>' +
  '</c><c r="B4"><v>120.5</v></c><c r="C4" s="1">' +
  "<v>2.5</v></c><c " +
  'r="D4" s="1"><f>Bills[[#This ' +
  "Row],[Quantity]]*Bills[[#This " +
  'Row],[Price]]</f><v>301.25</v></c><c r="F4"><f ' +
  't="shared" ref="F4:F6" si="0">B4*2</f><v>241</v></c><c r="H4"><f t="array" ref="H4:H6">B4:B6*10</f><v>1205</v></c></row>' +
  '<row r="5" spans="1:8" hidden="1"><c r="A5" t="s">' +
  '<v>5</v></c><c r="B5" s="3"><v>10</v></c><c r="C5" s="1">' +
  '<v>4</v></c><c r="D5" s="1"><f>Bills[[#This Row],' +
  "[Quantity]]*Bills[[#This Row],[Price]]</f><v>40</v>" +
  '</c><c r="F5">' +
  '<f t="shared" si="0"/><v>20</v>' +
  '</c><c r="H5"><v>100</v></c></row>' +
  '<row r="6" spans="1:8"><c r="A6" t="s"><v>7</v></c>' +
  '<c r="B6"><v>1</v></c><c r="C6" s="1"><v>1E-3</v>' +
  '</c><c r="D6" ' +
  's="1"><f>Bills[[#This Row],[Quantity]]*Bills[[#This ' +
  'Row],[Price]]</f><v>1E-3</v></c><c r="F6"><f t="shared" ' +
  'si="0"/><v>2</v></c><c r="H6"><v>10</v></c></row>' +
  '<row r="7" spans="1:8"><c r="A7" t="s"><v>6</v>' +
  '</c><c r="B7"><f>SUBTOTAL(109,Bills[Quantity])</f>' +
  "<v>131.5</v></c>" +
  '<c r="D7" s="1"><f>SUBTOTAL(109,' +
  "Bills[Amount])</f><v>341.251</v></c></row>" +
  '<row r="10" spans="1:8"><c r="A10"><f>SUM(B4:B6)</f>' +
  '<v>131.5</v></c><c r="B10"><f>D7*Factor</f>' +
  "<v>682.502</v></c>" +
  '<c r="C10" t="e"><f>NA()</f><v>#N/A</v></c><c r="D10" t="b"><v>1</v></c><c r="E10" t="str"><f>""</f><v></v></c></row>' +
  '<row r="12" spans="1:8"><c r="A12" t="s"><v>8</v></c><c r="B12" t="d"><v>2026-05-01T12:00:00</v></c></row></sheetData>' +
  '<mergeCells count="1"><mergeCell ref="A1:D1"/>' +
  '</mergeCells><conditionalFormatting sqref="D4:D6"><cfRule ' +
  'type="cellIs" dxfId="0" priority="1" operator="greaterThan"><formula>100</formula></cfRule></conditionalFormatting>' +
  '<dataValidations count="2"><dataValidation ' +
  'type="list" allowBlank="1" showInputMessage="1" ' +
  'showErrorMessage="1" ' +
  'sqref="A4:A6"><formula1>Choices</formula1>' +
  '</dataValidation><dataValidation type="decimal" ' +
  'operator="greaterThan" ' +
  'sqref="B4:B6"><formula1>0</formula1>' +
  "</dataValidation></dataValidations>" +
  '<hyperlinks><hyperlink ref="A12" ' +
  'r:id="rId4"/></hyperlinks>' +
  '<pageMargins left="0.7" right="0.7" top="0.75" ' +
  'bottom="0.75" header="0.3" footer="0.3"/><pageSetup ' +
  'orientation="landscape" r:id="rId5"/><headerFooter>' +
  "<oddFooter>&amp;LHill &amp;&amp; " +
  "Dale&amp;R&amp;P</oddFooter></headerFooter>" +
  '<drawing r:id="rId1"/><legacyDrawing r:id="rId2"/><tableParts count="1"><tablePart r:id="rId6"/></tableParts>' +
  '<extLst><ext uri="{CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF}">' +
  '<x14:dataValidations count="1">' +
  "<x14:dataValidation " +
  'type="list" allowBlank="1"><x14:formula1>' +
  "<xm:f>Lists!$A$1:$A$3</xm:f>" +
  "</x14:formula1><xm:sqref>F10</xm:sqref>" +
  "</x14:dataValidation></x14:dataValidations>" +
  "</ext></extLst></worksheet>";

const parts: Readonly<Record<string, string>> = {
  "[Content_Types].xml": `${head}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="png" ContentType="image/png"/><Default Extension="bin" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.printerSettings"/><Default Extension="vml" ContentType="application/vnd.openxmlformats-officedocument.vmlDrawing"/><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>${Object.entries(
    types,
  )
    .map(([name, type]) => `<Override PartName="/${name}" ContentType="${type}"/>`)
    .join("")}</Types>`,
  "_rels/.rels": relationships(
    ["officeDocument", "xl/workbook.xml"],
    ["http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties", "docProps/core.xml"],
    ["extended-properties", "docProps/app.xml"],
    ["customXml", "customXml/item1.xml"],
  ),
  "xl/workbook.xml":
    `${head}<workbook ${main}><fileVersion appName="xl" lastEdited="7" lowestEdited="7" rupBuild="1"/><workbookPr ` +
    'defaultThemeVersion="166925"/><bookViews><workbookView xWindow="0" yWindow="0" windowWidth="20000" ' +
    'windowHeight="9000"/></bookViews><sheets><sheet name="Bills" sheetId="1" r:id="rId1"/><sheet name="Lists" ' +
    'sheetId="4" state="hidden" r:id="rId2"/><sheet name="Summary" sheetId="5" r:id="rId3"/></sheets><externalReferences>' +
    '<externalReference r:id="rId8"/></externalReferences><definedNames><definedName name="_xlnm.Print_Titles" ' +
    'localSheetId="0">Bills!$3:$3</definedName><definedName name="Choices">Lists!$A$1:$A$3</definedName><definedName ' +
    'name="Factor">2</definedName></definedNames><calcPr calcId="191029"/><pivotCaches><pivotCache cacheId="3" r:id="rId9"/>' +
    "</pivotCaches></workbook>",
  "xl/_rels/workbook.xml.rels": relationships(
    ["worksheet", "worksheets/sheet1.xml"],
    ["worksheet", "worksheets/sheet2.xml"],
    ["worksheet", "/xl/worksheets/sheet3.xml"],
    ["theme", "theme/theme1.xml"],
    ["styles", "styles.xml"],
    ["sharedStrings", "sharedStrings.xml"],
    ["calcChain", "calcChain.xml"],
    ["externalLink", "externalLinks/externalLink1.xml"],
    ["pivotCacheDefinition", "pivotCache/pivotCacheDefinition1.xml"],
  ),
  "xl/worksheets/sheet1.xml": bills,
  "xl/worksheets/_rels/sheet1.xml.rels": relationships(
    ["drawing", "../drawings/drawing1.xml"],
    ["vmlDrawing", "../drawings/vmlDrawing1.vml"],
    ["comments", "../comments1.xml"],
    ["hyperlink", "https://example.org/", "External"],
    ["printerSettings", "../printerSettings/printerSettings1.bin"],
    ["table", "../tables/table1.xml"],
  ),
  "xl/worksheets/sheet2.xml":
    `${head}<worksheet ${main}><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>seed</t></is></c></row><row r="2"><c r="A2" ` +
    't="inlineStr"><is><t>fuel</t></is></c></row><row r="3"><c r="A3" t="inlineStr"><is><t>oil, engine</t></is></c></row>' +
    '</sheetData><sheetProtection sheet="1" objects="1" scenarios="1"/></worksheet>',
  // As a program may write it that leaves out what can be left out: no dimension, rows and cells that do not say where they are.
  "xl/worksheets/sheet3.xml":
    `${head}<x:worksheet xmlns:x="${spreadsheet}" xmlns:r="${office}"><x:sheetData><x:row><x:c t="inlineStr"><x:is><x:t>All ` +
    'bills</x:t></x:is></x:c><x:c><x:f>SUM(Bills[Amount])</x:f><x:v>341.251</x:v></x:c></x:row><x:row r="5"><x:c r="B5"/><x:c>' +
    "<x:v>7</x:v></x:c></x:row></x:sheetData></x:worksheet>",
  "xl/worksheets/_rels/sheet3.xml.rels": relationships(["pivotTable", "../pivotTables/pivotTable1.xml"]),
  "xl/sharedStrings.xml": `${head}<sst xmlns="${spreadsheet}" count="20" uniqueCount="${strings.length}">${strings.join("")}</sst>`,
  "xl/styles.xml":
    `${head}<styleSheet xmlns="${spreadsheet}"><numFmts count="1"><numFmt numFmtId="164" formatCode="&quot;$&quot;#,##0.00"/>` +
    '</numFmts><fonts count="2"><font><sz val="11"/><name val="Calibri"/><family val="2"/><scheme val="minor"/></font><font>' +
    '<b/><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill>' +
    '<fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/>' +
    '</border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
    '<cellXfs count="4"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="164" fontId="0" ' +
    'fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/><xf numFmtId="0" fontId="1" fillId="0" borderId="0" ' +
    'xfId="0" applyFont="1"/><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0" applyProtection="1">' +
    '<protection locked="0"/></xf></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/>' +
    '</cellStyles><dxfs count="1"><dxf><fill><patternFill><bgColor rgb="FFFFC7CE"/></patternFill></fill></dxf></dxfs><tableStyles ' +
    'count="0" defaultTableStyle="TableStyleMedium2"/></styleSheet>',
  "xl/tables/table1.xml":
    `${head}<table xmlns="${spreadsheet}" id="7" name="Bills" displayName="Bills" ref="A3:D7" totalsRowCount="1"><autoFilter ` +
    'ref="A3:D6"/><tableColumns count="4"><tableColumn id="1" name="Item" totalsRowLabel="Total"/><tableColumn id="2" ' +
    'name="Quantity" totalsRowFunction="sum"/><tableColumn id="3" name="Price"/><tableColumn id="4" name="Amount" ' +
    'totalsRowFunction="sum"><calculatedColumnFormula>Bills[[#This Row],[Quantity]]*Bills[[#This ' +
    'Row],[Price]]</calculatedColumnFormula></tableColumn></tableColumns><tableStyleInfo name="TableStyleMedium2" ' +
    'showRowStripes="1"/></table>',
  "xl/comments1.xml":
    `${head}<comments xmlns="${spreadsheet}"><authors><author>Grower</author></authors><commentList><comment ref="A4" authorId="0">` +
    "<text><t>Ordered by telephone.</t></text></comment></commentList></comments>",
  "xl/drawings/vmlDrawing1.vml": '<xml xmlns:v="urn:schemas-microsoft-com:vml"><v:shape id="_x0000_s1025"/></xml>',
  "xl/drawings/drawing1.xml":
    `${head}<xdr:wsDr ` +
    `xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" ` +
    `xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" ` +
    `xmlns:r="${office}">` +
    `<xdr:oneCellAnchor><a:blip ` +
    `r:embed="rId1"/></xdr:oneCellAnchor><xdr:oneCellAnchor><a:graphicData r:id="rId2"/></xdr:oneCellAnchor></xdr:wsDr>`,
  "xl/drawings/_rels/drawing1.xml.rels": relationships(["image", "../media/image1.png"], ["chart", "../charts/chart1.xml"]),
  "xl/charts/chart1.xml":
    `${head}<c:chartSpace ` +
    `xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart"><c:chart>` +
    `<c:plotArea><c:barChart><c:ser><c:val><c:numRef>` +
    `<c:f>Bills!$D$4:$D$6</c:f></c:numRef></c:val></c:ser>` +
    `</c:barChart>` +
    `</c:plotArea></c:chart></c:chartSpace>`,
  "xl/media/image1.png": "not really a picture",
  "xl/printerSettings/printerSettings1.bin": "\u0000\u0001settings",
  "xl/theme/theme1.xml": `${head}<a:theme xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" name="Office"/>`,
  "xl/calcChain.xml": `${head}<calcChain xmlns="${spreadsheet}"><c r="D4" i="1"/><c r="D5"/><c r="D6"/><c r="F4"/><c r="A10"/><c r="B10"/></calcChain>`,
  "xl/pivotCache/pivotCacheDefinition1.xml":
    `${head}<pivotCacheDefinition ${main} r:id="rId1" recordCount="0"><cacheSource type="worksheet"><worksheetSource name="Bills"/>` +
    '</cacheSource><cacheFields count="0"/></pivotCacheDefinition>',
  "xl/pivotCache/_rels/pivotCacheDefinition1.xml.rels": relationships(["pivotCacheRecords", "pivotCacheRecords1.xml"]),
  "xl/pivotCache/pivotCacheRecords1.xml": `${head}<pivotCacheRecords ${main} count="0"/>`,
  "xl/pivotTables/pivotTable1.xml":
    `${head}<pivotTableDefinition xmlns="${spreadsheet}" name="Pivot" cacheId="3"><location ref="A10:B12" firstHeaderRow="1" ` +
    'firstDataRow="1" firstDataCol="1"/></pivotTableDefinition>',
  "xl/pivotTables/_rels/pivotTable1.xml.rels": relationships(["pivotCacheDefinition", "../pivotCache/pivotCacheDefinition1.xml"]),
  "xl/externalLinks/externalLink1.xml": `${head}<externalLink ${main}><externalBook r:id="rId1"/></externalLink>`,
  "xl/externalLinks/_rels/externalLink1.xml.rels": relationships(["externalLinkPath", "prices.xlsx", "External"]),
  "customXml/item1.xml": '<farm xmlns="urn:example:farm">kept</farm>',
  "customXml/itemProps1.xml": `<ds:datastoreItem xmlns:ds="http://schemas.openxmlformats.org/officeDocument/2006/customXml"/>`,
  "customXml/_rels/item1.xml.rels": relationships(["customXmlProps", "itemProps1.xml"]),
  "docProps/app.xml":
    `${head}<Properties ` +
    `xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties">` +
    `<Application>Microsoft Excel</Application></Properties>`,
  "docProps/core.xml": `${head}<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties"/>`,
};

/** The workbook, with parts replaced or added as a test wants them; null takes one out. */
export function richWorkbook(changes: Readonly<Record<string, string | null>> = {}): Uint8Array {
  const all = Object.entries({ ...parts, ...changes }).filter((entry): entry is [string, string] => entry[1] !== null);
  return zipSync(Object.fromEntries(all.map(([name, text]) => [name, strToU8(text)])));
}

export const richParts = parts;
