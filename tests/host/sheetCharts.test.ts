import { describe, expect, it } from "vitest";
import { newWorkbook } from "../../src/host/embedded";
import type { ResultSheet } from "../../src/workbook/resultSheet";
import { opened } from "../support/xlsx/opened";
import { unzipSync, zipSync } from "fflate";

const sheet: ResultSheet = {
  name: "Cost per acre",
  columns: [20, 12],
  headingRows: 1,
  page: { orientation: "portrait", paper: "letter", pagesTall: 1, footer: "Farm" },
  rows: [
    [{ value: "Kind" }, { value: "Cost" }],
    [{ value: "Seed" }, { value: 110.5 }],
    [{ value: "Fuel" }, { value: 18 }],
  ],
  charts: [
    { kind: "line", title: "Below", categories: "A2:A3", series: [{ name: "Cost", values: "B2:B3" }], from: "A20", to: "B30" },
    {
      kind: "column",
      startsAtZero: true,
      title: "Cost & kind",
      categories: "A2:A3",
      series: [{ name: "Cost", values: "B2:B3" }],
      from: "A5",
      to: "B15",
    },
  ],
};

describe("the charts of a sheet", () => {
  it("are told in the order of its rows, with what the cells say now, in a file that was saved too", async () => {
    const workbook = newWorkbook();
    await workbook.write([sheet]);
    workbook.setCells("Cost per acre", [{ row: 1, column: 1, value: 120 }]);
    const expected = [
      { title: "Cost & kind", kind: "column", categories: ["Seed", "Fuel"], series: [{ name: "Cost", values: [120, 18] }] },
      { title: "Below", kind: "line", categories: ["Seed", "Fuel"], series: [{ name: "Cost", values: [120, 18] }] },
    ];
    expect(workbook.charts("Cost per acre")).toEqual(expected);
    expect(opened(workbook.save()).charts("Cost per acre")).toEqual(expected);
    expect(workbook.charts("Notes")).toEqual([]);
  });

  it("begin their values at nothing where they are said to", async () => {
    const workbook = newWorkbook();
    await workbook.write([sheet]);
    const charts = Object.entries(unzipSync(workbook.save())).filter(([name]) => /charts\/chart\d+\.xml$/.test(name));
    expect(
      charts.map(([, bytes]) => /<c:scaling><c:orientation val="minMax"\/><c:min val="0"\/>/.test(new TextDecoder().decode(bytes))).sort(),
    ).toEqual([false, true]);
  });

  it("keep nobody from the sheet where they are damaged, and are shown as stored where their cells are gone", async () => {
    const workbook = newWorkbook();
    await workbook.write([sheet]);
    const parts = unzipSync(workbook.save());
    const names = Object.keys(parts)
      .filter((name) => /charts\/chart\d+\.xml$/.test(name))
      .sort();
    const text = (name: string) => new TextDecoder().decode(parts[name]);
    const damaged = opened(zipSync({ ...parts, [names[0]!]: new TextEncoder().encode("<c:chartSpace") }));
    expect(
      damaged
        .charts("Cost per acre")
        .map(({ kind }) => kind)
        .sort(),
    ).toEqual(["column", "other"]);
    const elsewhere = opened(
      zipSync({ ...parts, [names[1]!]: new TextEncoder().encode(text(names[1]!).replaceAll("Cost per acre", "Gone")) }),
    );
    expect(elsewhere.charts("Cost per acre").find(({ title }) => title === "Cost & kind")).toMatchObject({
      categories: ["Seed", "Fuel"],
      series: [{ values: [110.5, 18] }],
    });
  });
});
