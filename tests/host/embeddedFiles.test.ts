/** Real files through the embedded workbook: what is read of them, and that nothing in them is lost. */
import { readFileSync } from "node:fs";
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { newWorkbook, openWorkbook, type EmbeddedWorkbook } from "../../src/host/embedded";
import { mostParts } from "../../src/host/embedded/package/zip";
import { centralDirectory } from "../../src/host/embedded/package/zipFormat";
import { HostError } from "../../src/host/workbookHost";
import type { Cell } from "../../src/workbook/cell";
import type { ResultSheet } from "../../src/workbook/resultSheet";
import { differingParts, entries, opened, partsOf, place, sound } from "../support/xlsx/opened";
import { packageFaults } from "../support/xlsx/packageFaults";
import { richParts, richWorkbook } from "../support/xlsx/richWorkbook";

const fixture = (name: string) => readFileSync(`tests/fixtures/${name}.xlsx`);
const sheet1 = "xl/worksheets/sheet1.xml";

describe("a file that was only opened", () => {
  it.each([
    ["rich", richWorkbook()],
    ["openpyxl", fixture("openpyxl")],
    ["libreoffice", fixture("libreoffice")],
  ])("is saved as it was: %s", async (_, bytes) => {
    const workbook = opened(bytes);
    await workbook.read();
    expect(differingParts(bytes, workbook.save())).toEqual([]);
    expect(workbook.unsaved).toBe(false);
  });
});

describe("a file of which one number was changed", () => {
  it("differs in that number, in the note that it has to be calculated, and in the chain of calculation", () => {
    const bytes = richWorkbook();
    const workbook = opened(bytes);
    workbook.setCells("Bills", entries({ B4: 121 }));
    const saved = sound(workbook);
    expect(differingParts(bytes, saved)).toEqual([
      "[Content_Types].xml",
      "xl/_rels/workbook.xml.rels",
      "xl/calcChain.xml",
      "xl/workbook.xml",
      sheet1,
    ]);
    const row = '<row r="4" spans="1:8">';
    expect(partsOf(saved)[sheet1]).toBe(
      partsOf(bytes)[sheet1]!.replace(row, '<row r="4">').replace('<c r="B4"><v>120.5</v></c>', '<c r="B4"><v>121</v></c>'),
    );
    expect(partsOf(saved)["xl/workbook.xml"]).toContain('fullCalcOnLoad="1"');
    expect(partsOf(saved)["xl/calcChain.xml"]).toBeUndefined();
  });

  it("keeps every other part packed as it was", () => {
    const bytes = richWorkbook();
    const workbook = opened(bytes);
    workbook.setCells("Bills", entries({ B4: 121 }));
    const packed = (file: Uint8Array, name: string) => centralDirectory(file, mostParts).find((each) => each.name === name)?.content;
    const saved = workbook.save();
    for (const name of [
      "xl/media/image1.png",
      "xl/pivotTables/pivotTable1.xml",
      "customXml/item1.xml",
      "xl/charts/chart1.xml",
      "xl/theme/theme1.xml",
    ]) {
      expect(packed(saved, name)).toEqual(packed(bytes, name));
    }
  });

  it("is the old file again after an undo, and the new one after a redo", () => {
    const bytes = richWorkbook();
    const workbook = opened(bytes);
    workbook.setCells("Bills", entries({ B4: 121, A12: "new", H20: true }));
    const changed = workbook.save();
    expect(workbook.undo()).toBe(true);
    expect(differingParts(bytes, workbook.save())).toEqual([]);
    expect(workbook.undo()).toBe(false);
    expect(workbook.redo()).toBe(true);
    expect(differingParts(changed, workbook.save())).toEqual([]);
  });

  it.each(["openpyxl", "libreoffice"])("is sound when %s has written it, and read again with the new number", async (name) => {
    const bytes = fixture(name);
    const workbook = opened(bytes);
    workbook.setCells("Grower's bills", entries({ C4: 99, B12: "below", AA1: "=C4+1" }));
    const again = opened(sound(workbook));
    expect(again.cellAt("Grower's bills", place("C4")).value).toBe(99);
    expect(again.cellAt("Grower's bills", place("B12")).value).toBe("below");
    expect(again.cellAt("Grower's bills", place("AA1")).formula).toBe("C4+1");
    const changed = differingParts(bytes, workbook.save());
    expect(changed.filter((part) => !/workbook\.xml|sheet1\.xml/.test(part))).toEqual([]);
  });
});

describe("what is read", () => {
  it("of a file by openpyxl, which stores texts in the cells and no values of formulas", async () => {
    const { tables } = await opened(fixture("openpyxl")).read();
    expect(tables).toEqual([
      {
        name: "Purchases",
        headers: ["Date", "Item", "Quantity", "Price", "Amount", "Paid", "Note"],
        body: { sheet: "Grower's bills", row: 3, column: 0 },
        rows: [
          [46115, "Seed, early", 120.5, 270.25, "", true, "50 % now"],
          [46132, "Urea", "1,200", 0.31, "", false, "#N/A"],
          [46143.5, "Diesel – red ‹°C›", 0.1, 3.333333333333333, "", "", "two\nlines & <marks>"],
          ["", "", "", "", "", "", ""],
        ],
        stale: [0, 1, 2, 3].map((row) => ({ row, column: 4 })),
      },
    ]);
  });

  it("of a file by LibreOffice, with the values that it worked out", async () => {
    const { tables } = await opened(fixture("libreoffice")).read();
    expect(tables[0]!.stale).toBeUndefined();
    expect(tables[0]!.rows.map((row) => row[4])).toEqual([32565.125, 372, 0.333333333333333, 0]);
    expect(tables[0]!.rows[2]![6]).toBe("two\nlines & <marks>");
  });

  it("of rich texts, phonetic guides, escaped signs, dates as text, errors, and cells that do not say where they are", async () => {
    const workbook = opened(richWorkbook());
    const { tables } = await workbook.read();
    expect(tables[0]!.rows).toEqual([
      ["Seed, early", 120.5, 2.5, 301.25],
      ["燃料", 10, 4, 40],
      [" two\r\nlines ", 1, 0.001, 0.001],
    ]);
    const value = (sheet: string, cell: string) => workbook.cellAt(sheet, place(cell)).value;
    expect(["A12", "B12", "C10", "D10", "E10"].map((cell) => value("Bills", cell))).toEqual(["_x0041_", 46143.5, "#N/A", true, ""]);
    expect(["A1", "B1", "B5", "C5"].map((cell) => value("Summary", cell))).toEqual(["All bills", 341.251, "", 7]);
    expect(workbook.cellAt("Bills", place("F6")).formula).toBe("B6*2");
    expect(workbook.cellAt("Bills", place("C4"))).toMatchObject({ numberFormat: '"$"#,##0.00', text: "$2.50" });
    expect(workbook.sheets().map(({ name, hidden }) => [name, hidden])).toEqual([
      ["Bills", false],
      ["Lists", true],
      ["Summary", false],
    ]);
  });

  it("of drop-down lists: words, a range, a name, and a list on another sheet", () => {
    const rich = opened(richWorkbook());
    expect(rich.choices("Bills", place("A5"))).toEqual(["seed", "fuel", "oil, engine"]);
    expect(rich.choices("Bills", place("F10"))).toEqual(["seed", "fuel", "oil, engine"]);
    expect(rich.choices("Bills", place("A9"))).toEqual([]);
    const other = opened(fixture("openpyxl"));
    expect(other.choices("Grower's bills", place("G50"))).toEqual(["bag", "lb", "gal"]);
    expect(other.choices("Grower's bills", place("B9"))).toEqual(["North forty", "Creek", "Hill"]);
  });

  it("of a range that Matches names by a defined name", async () => {
    const workbook = newWorkbook();
    const matches = [
      ["Table", "Range", "Column", "Heading"],
      ["Stand counts", "Counts", "Plants", "Plants"],
      ["Stand counts", "Nowhere", "Plants", "Plants"],
    ];
    workbook.setCells("Notes", entries({ E2: "Where", F2: "Plants", E3: "Creek", F3: 28 }));
    await workbook.makeTables([
      {
        name: "Matches",
        sheet: "Matches",
        columns: matches[0]!.map((heading) => ({ heading, width: 12, hint: "", required: true })),
        rows: [matches[1] as Cell[]],
      },
    ]);
    await workbook.addRows("Matches", [new Map(matches[0]!.map((heading, index) => [heading, matches[2]![index]!]))]);
    const parts = partsOf(sound(workbook));
    const named = parts["xl/workbook.xml"]!.replace(
      "</sheets>",
      '</sheets><definedNames><definedName name="counts">Notes!$E$2:$F$3</definedName></definedNames>',
    );
    const { ranges } = await opened(
      zipSync(
        Object.fromEntries(
          Object.entries({ ...parts, "xl/workbook.xml": named }).map(([name, text]) => [name, Buffer.from(text, "latin1")]),
        ),
      ),
    ).read();
    expect([...ranges.keys()]).toEqual(["Counts"]);
    expect(ranges.get("Counts")).toMatchObject({
      headers: ["Where", "Plants"],
      rows: [["Creek", 28]],
      body: { sheet: "Notes", row: 2, column: 4 },
    });
  });
});

describe("a range in Matches or selected", () => {
  it("is what is filled within it, whatever else is on the sheet", async () => {
    const workbook = newWorkbook();
    workbook.setCells("Notes", entries({ A1: "A title across", C3: "Where", D3: "Plants", C4: "Creek", D4: 28, F1: "note", F9: "note" }));
    await workbook.makeTables([
      {
        name: "Matches",
        sheet: "Matches",
        columns: ["Table", "Range", "Column", "Heading"].map((heading) => ({ heading, width: 12, hint: "", required: true })),
        rows: [["Stand counts", "Notes!B:E", "Plants", "Plants"]],
      },
    ]);
    await workbook.addRows("Matches", [new Map([["Range", "Notes!B1:E9"]])]);
    const { ranges } = await workbook.read();
    const expected = { headers: ["Where", "Plants"], rows: [["Creek", 28]], body: { sheet: "Notes", row: 3, column: 2 } };
    expect(ranges.get("Notes!B:E")).toMatchObject(expected);
    expect(ranges.get("Notes!B1:E9")).toMatchObject(expected);
    workbook.pick("Notes", "B:E");
    expect(await workbook.selection()).toEqual({ address: "Notes!B:E", headings: ["Where", "Plants"] });
  });
});

describe("parts in UTF-16", () => {
  it("are read, and written again as UTF-8 that says so", () => {
    const wide = (text: string) => Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(text, "utf16le")]);
    const text = (name: string) => richParts[name]!.replace('encoding="UTF-8"', 'encoding="UTF-16"');
    const parts = Object.fromEntries(
      Object.entries(richParts).map(([name, each]): [string, Uint8Array] => [
        name,
        name === sheet1 || name === "xl/workbook.xml" ? wide(text(name)) : strToU8(each),
      ]),
    );
    const workbook = opened(zipSync(parts));
    expect(workbook.cellAt("Bills", place("A5")).value).toBe("燃料");
    workbook.setCells("Bills", entries({ A6: "油" }));
    expect(opened(sound(workbook)).cellAt("Bills", place("A6")).value).toBe("油");
    expect(partsOf(workbook.save())[sheet1]).toContain('encoding="UTF-8"');
  });
});

describe("formulas that share cells", () => {
  it("keep their own words when the first of a shared group is overwritten", () => {
    const workbook = opened(richWorkbook());
    workbook.setCells("Bills", entries({ F4: 1 }));
    expect(["F5", "F6"].map((cell) => workbook.cellAt("Bills", place(cell)).formula)).toEqual(["B5*2", "B6*2"]);
    const saved = partsOf(sound(workbook))[sheet1]!;
    expect(saved).not.toContain("shared");
    expect(saved).toContain("<f>B5*2</f>");
  });

  it("stay shared when one that follows is overwritten", () => {
    const workbook = opened(richWorkbook());
    workbook.setCells("Bills", entries({ F5: 1 }));
    expect(workbook.cellAt("Bills", place("F6")).formula).toBe("B6*2");
    expect(partsOf(sound(workbook))[sheet1]).toContain('<f t="shared" ref="F4:F6" si="0">B4*2</f>');
  });

  it("are not changed in part where they fill several cells, and can be cleared as a whole", () => {
    const workbook = opened(richWorkbook());
    expect(() => workbook.setCells("Bills", entries({ H5: 1 }))).toThrow(/array formula in H4:H6/);
    expect(workbook.unsaved).toBe(false);
    workbook.setCells("Bills", entries({ H4: "", H5: "", H6: "" }));
    expect(partsOf(sound(workbook))[sheet1]).not.toContain("array");
  });
});

describe("a protected sheet", () => {
  it("refuses entries but for cells that are not locked", () => {
    expect(() => opened(richWorkbook()).setCells("Lists", entries({ A1: "x" }))).toThrow(/"Lists" is protected/);
    const workbook = opened(fixture("openpyxl"));
    expect(() => workbook.setCells("Fields", entries({ C3: 1 }))).toThrow(/protected/);
    workbook.setCells("Fields", entries({ C2: 40 }));
    expect(workbook.cellAt("Fields", place("C2")).value).toBe(40);
  });
});

describe("a result sheet", () => {
  const sheet = (name: string): ResultSheet => ({
    name,
    columns: [9],
    rows: [[{ value: "x" }]],
    headingRows: 0,
    page: { orientation: "portrait", paper: "a4", pagesTall: 1, footer: "" },
    charts: [],
  });

  it("that the user has protected is left alone, and nothing of the command is done", async () => {
    const workbook = newWorkbook();
    await workbook.write([sheet("Stand")]);
    const parts = partsOf(workbook.save());
    const locked = {
      ...parts,
      "xl/worksheets/sheet2.xml": parts["xl/worksheets/sheet2.xml"]!.replace("</sheetData>", '</sheetData><sheetProtection sheet="1"/>'),
    };
    const again = opened(zipSync(Object.fromEntries(Object.entries(locked).map(([name, text]) => [name, Buffer.from(text, "latin1")]))));
    await expect(again.write([sheet("Break-even"), sheet("Stand")])).rejects.toMatchObject({
      reason: "protected",
      message: expect.stringMatching(/Stand/) as string,
    });
    expect(again.unsaved).toBe(false);
  });

  it("is made again in its own part, with its charts' parts in place of the old ones", async () => {
    const chart = {
      kind: "line" as const,
      title: "Price & yield",
      categories: "A1:A1",
      series: [{ name: "Net", values: "A1:A1" }],
      from: "D2",
      to: "H9",
    };
    const workbook = opened(richWorkbook());
    for (let time = 1; time <= 3; time += 1)
      await workbook.write([{ ...sheet("Stand"), charts: [chart] }, sheet('Stand\'s "other" <sheet>')]);
    const parts = partsOf(sound(workbook));
    expect(Object.keys(parts).filter((name) => /charts\/chart\d/.test(name))).toHaveLength(2);
    expect(Object.keys(parts).filter((name) => /worksheets\/sheet\d/.test(name))).toHaveLength(5);
    expect(
      workbook
        .sheets()
        .map(({ name }) => name)
        .slice(3),
    ).toEqual(["Stand", 'Stand\'s "other" <sheet>']);
  });
});

describe("a table that is given another column", () => {
  it.each([
    ["rich", richWorkbook()],
    ["openpyxl", fixture("openpyxl")],
    ["libreoffice", fixture("libreoffice")],
  ])("is sound and says so itself: %s", async (_, bytes) => {
    const workbook = opened(bytes);
    const { tables } = await workbook.read();
    let widened = 0;
    for (const { name, headers } of tables) {
      const before = workbook.save();
      try {
        await workbook.addColumn({ table: name, heading: "Loss & more %", numberFormat: "0.0#%", cells: new Map([[1, 0.05]]) });
      } catch (refusal) {
        expect((refusal as HostError).message).toMatch(/Something stands right of the table/);
        expect(differingParts(before, workbook.save())).toEqual([]);
        continue;
      }
      widened += 1;
      const table = opened(sound(workbook))
        .sheets()
        .flatMap((each) => each.tables)
        .find((each) => each.name === name)!;
      expect((await opened(workbook.save()).read()).tables.find((each) => each.name === name)?.headers).toEqual([
        ...headers,
        "Loss & more %",
      ]);
      expect(table.area.right - table.area.left).toBe(headers.length);
      expect(workbook.undo()).toBe(true);
      expect(differingParts(before, workbook.save())).toEqual([]);
    }
    expect(widened).toBeGreaterThan(0);
  });
});

describe("a file that cannot be opened", () => {
  const refusal = (bytes: Uint8Array) => {
    const result = openWorkbook(bytes);
    if (result.ok) throw new Error("It was opened.");
    return result.problems[0]!;
  };
  const zipped = (parts: Readonly<Record<string, string>>) =>
    zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])));

  it.each([
    [
      "a document of another program",
      zipped({ mimetype: "application/vnd.oasis.opendocument.spreadsheet", "content.xml": "<a/>" }),
      "not-a-workbook",
    ],
    [
      "a text document",
      zipped({
        "[Content_Types].xml": "<Types/>",
        "_rels/.rels": richParts["_rels/.rels"]!.replace("xl/workbook.xml", "word/document.xml"),
        "word/document.xml": '<w:document xmlns:w="urn:w"/>',
      }),
      "not-a-workbook",
    ],
    [
      "a binary workbook",
      richWorkbook({
        "xl/workbook.xml": null,
        "_rels/.rels": richParts["_rels/.rels"]!.replace("xl/workbook.xml", "xl/workbook.bin"),
        "xl/workbook.bin": "\u0083\u0001",
      }),
      "old-format",
    ],
    ["a workbook without one of its sheets", richWorkbook({ "xl/worksheets/sheet2.xml": null }), "damaged"],
    ["a workbook with a table that has gone", richWorkbook({ "xl/tables/table1.xml": null }), "damaged"],
    ["a sheet that breaks off", richWorkbook({ [sheet1]: richParts[sheet1]!.slice(0, 2000) }), "damaged"],
    ["a workbook part that breaks off", richWorkbook({ "xl/workbook.xml": richParts["xl/workbook.xml"]!.slice(0, 500) }), "damaged"],
    ["styles that break off", richWorkbook({ "xl/styles.xml": richParts["xl/styles.xml"]!.slice(0, 500) }), "damaged"],
    [
      "XML with a document type, which may grow without end",
      richWorkbook({ "xl/workbook.xml": richParts["xl/workbook.xml"]!.replace("<workbook", '<!DOCTYPE a [<!ENTITY b "c">]><workbook') }),
      "damaged",
    ],
    ["shared strings with a document type", richWorkbook({ "xl/sharedStrings.xml": "<!DOCTYPE a []><sst/>" }), "damaged"],
  ])("is told to be so in words: %s", (_, bytes, code) => {
    const fault = refusal(bytes);
    expect(fault.code).toBe(code);
    expect(fault.message).toMatch(/^[A-Z].{20,}\.$/);
  });

  it("never brings the program down, whatever sign of it is changed", async () => {
    const names = [
      "[Content_Types].xml",
      "_rels/.rels",
      "xl/workbook.xml",
      "xl/_rels/workbook.xml.rels",
      sheet1,
      "xl/worksheets/sheet3.xml",
      "xl/styles.xml",
      "xl/tables/table1.xml",
      "xl/sharedStrings.xml",
    ];
    const signs = ["<", ">", '"', "/", "&", "", "9", "x", " "];
    let opens = 0;
    for (const name of names) {
      const text = richParts[name]!;
      for (let index = 0; index < 15; index += 1) {
        const at = (index * 7919) % text.length;
        const result = openWorkbook(richWorkbook({ [name]: text.slice(0, at) + signs[index % signs.length]! + text.slice(at + 1) }));
        if (!result.ok) {
          expect(result.problems[0]!.message.length).toBeGreaterThan(20);
          continue;
        }
        opens += 1;
        await useful(result.value);
      }
    }
    expect(opens).toBeGreaterThan(20);
    expect(opens).toBeLessThan(names.length * 15);
  }, 60_000);
});

/** Everything that may be done with a workbook that could be opened; refusals in words are in order. */
async function useful(workbook: EmbeddedWorkbook): Promise<void> {
  await workbook.read();
  const [sheet] = workbook.sheets();
  workbook.cellAt(sheet!.name, place("B4"));
  workbook.choices(sheet!.name, place("A4"));
  try {
    workbook.setCells(sheet!.name, entries({ B4: 1, F4: "=B4" }));
    await workbook.addRows("Bills", [new Map([["Item", "Oil"]])]);
  } catch (refused) {
    if (!(refused instanceof HostError)) throw refused;
  }
  workbook.save();
}

describe("a new workbook", () => {
  it("is in order, empty, and takes entries", async () => {
    const workbook = newWorkbook();
    expect(packageFaults(workbook.save())).toEqual([]);
    expect(await workbook.read()).toEqual({ dateSystem: "1900", tables: [], ranges: new Map() });
    workbook.setCells("Notes", entries({ A1: "Bills & <more>", B2: 0.1, C3: false, D4: " two\nlines\u0007_x0041_ ", E5: "\ud83c" }));
    const again = opened(sound(workbook));
    expect(["A1", "B2", "C3", "D4", "E5"].map((cell) => again.cellAt("Notes", place(cell)).value)).toEqual([
      "Bills & <more>",
      0.1,
      false,
      " two\nlines\u0007_x0041_ ",
      "\ufffd",
    ]);
  });
});
