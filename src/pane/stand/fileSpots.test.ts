import { describe, expect, it } from "vitest";
import { countedContent } from "../../../tests/support/paneWorkbook";
import { Decimal } from "../../core/numbers/decimal";
import { seasonReport } from "../../workbook/report";
import { fileSpotsView, type FileSpotsDraft } from "./fileSpots";
import { pointsFile } from "./pointsFile";

const { season } = seasonReport(countedContent);
const mill = season.fields.find(({ name }) => name === "Mill Road")!;
const draft: FileSpotsDraft = { text: "", unit: null, how: "length", rowWidth: "30", length: "17.42", hoop: "", date: "2031-06-10" };
const view = (text: string, more: Partial<FileSpotsDraft> = {}, of = season) => fileSpotsView({ ...draft, text, ...more }, mill, of, false);
const rows = (text: string, more: Partial<FileSpotsDraft> = {}) =>
  (view(text, more).rows ?? []).map((row) =>
    Object.fromEntries([...row].map(([heading, value]) => [heading, value instanceof Decimal ? value.toFixed() : value])),
  );
const collection = (...features: readonly unknown[]) => JSON.stringify({ type: "FeatureCollection", features });
const point = (coordinates: readonly unknown[], properties: unknown = { plants: 27 }, type = "Point") => ({
  type: "Feature",
  geometry: { type, coordinates },
  properties,
});

describe("a GeoJSON file of points", () => {
  it("has the longitude first, as RFC 7946 says (3.1.1): [-93.62, 42.0] lies 42 degrees north", () => {
    expect(rows(collection(point([-93.62, 42, 310], { Plants: 27, "Weak plants": 2, Part: "Knoll", Notes: "dry" })))).toEqual([
      {
        Field: "Mill Road",
        Date: { day: "2031-06-10" },
        "Row width": "30",
        Length: "17.42",
        Plants: "27",
        "Weak plants": "2",
        Latitude: "42",
        Longitude: "-93.62",
        Part: "Knoll",
        Remark: "dry",
      },
    ]);
    expect(rows(JSON.stringify(point([-93.62, 42])))).toHaveLength(1);
  });

  it("says on which day its part was planted; a day that nobody can read is no reason to count the spot for another planting", () => {
    const of = (planted: string) => collection(point([-93.62, 42], { plants: 27, part: "Knoll", "Part planted": planted }));
    expect(rows(of("2031-05-28T08:00:00Z"))).toMatchObject([{ Part: "Knoll", "Part planted": { day: "2031-05-28" } }]);
    expect(view(of("late May"))).toMatchObject({
      rows: null,
      says: [expect.anything(), "Not read: point 1, “late May” is no date of planting."],
    });
  });

  it("loses no feature without a word: another shape, no place, a number missing, degrees the wrong way round", () => {
    const { says, rows: added } = view(
      collection(
        point([-93.62, 42]),
        point(
          [
            [-93, 42],
            [-93, 43],
          ],
          { plants: 5 },
          "LineString",
        ),
        { type: "Feature", geometry: null, properties: { plants: 3 } },
        point([-93.62]),
        point([42, -93.62]),
        point([-93.62, 42.1], {}),
        { type: "Thing" },
        point([0, 0]),
      ),
    );
    expect(added).toHaveLength(1);
    expect(says).toEqual([
      "One spot to add in Mill Road, 2031-06-10.",
      "Not read: point 2, LineString is no Point with a longitude and a latitude; point 3, it has no place; point 4, Point is no Point " +
        "with a longitude and a latitude; point 7, it is no Feature; point 5, its latitude and longitude are the wrong way round; " +
        "and 2 more.",
    ]);
  });

  it("is none where it is broken, another thing, or counts in another net of coordinates", () => {
    const fault = (text: string) => view(text).fault;
    expect(fault('{"type": "FeatureCollection", ')).toMatch(/^The file begins as GeoJSON and is none:/);
    expect(fault('{"type": "Point", "coordinates": [1, 2]}')).toBe(
      "The file is no GeoJSON of points: it needs a FeatureCollection, or one Feature.",
    );
    const withCrs = (name: string) =>
      JSON.stringify({ type: "FeatureCollection", crs: { type: "name", properties: { name } }, features: [point([-93, 42])] });
    expect(fault(withCrs("urn:ogc:def:crs:EPSG::26915"))).toMatch(/^The file counts its coordinates in another way/);
    expect(fault(withCrs("urn:ogc:def:crs:OGC:1.3:CRS84"))).toBeNull();
  });
});

describe("a file of a phone", () => {
  const phone = `name,Time,Lat,Long,Plant count,Row spacing (cm),Row length (m),accuracy
spot 1,2031-06-09T14:02:11Z,42.0001,-93.6201,26,76.2,5.31,4
"spot, 2
by the lane",2031-06-09 14:09,"42° 0' 36"" N","93° 37' 12"" W",24,76.2,5.31,5`;

  it("is read under its own headings, in its own units, cells over two lines as well", () => {
    expect(rows(phone)).toEqual([
      {
        Field: "Mill Road",
        Date: { day: "2031-06-09" },
        "Row width": "30",
        Length: "17.42",
        Plants: "26",
        Latitude: "42.0001",
        Longitude: "-93.6201",
        Remark: "spot 1",
      },
      {
        Field: "Mill Road",
        Date: { day: "2031-06-09" },
        "Row width": "30",
        Length: "17.42",
        Plants: "24",
        Latitude: "42.01",
        Longitude: "-93.62",
        Remark: "spot, 2\nby the lane",
      },
    ]);
    expect(view(phone).says).toEqual(["2 spots to add in Mill Road, 2031-06-09.", "Columns that are not read: accuracy."]);
  });

  it("that names no unit of its sizes is not read until somebody says which", () => {
    const bare = "Lat,Lon,Plants,Length\n42,-93,27,5";
    expect(view(bare)).toMatchObject({ asks: { unit: true, size: false, date: true }, rows: null });
    expect(view(bare).says).toEqual(["Choose what its widths and lengths are in, and nothing is guessed."]);
    expect([rows(bare, { unit: "in and ft" })[0]!.Length, rows(bare, { unit: "cm and m" })[0]!.Length]).toEqual(["5", "16.4"]);
  });

  it("that says no size or no date asks for them", () => {
    const bare = "Lat,Lon,Plants\n42,-93,27";
    expect(view(bare, { rowWidth: "", date: "" })).toMatchObject({
      asks: { unit: false, size: true, date: true },
      faults: { rowWidth: "Enter a number above zero.", date: "Enter a date." },
      rows: null,
    });
    expect(rows(bare, { how: "hoop", hoop: "30" })[0]).toMatchObject({ "Hoop diameter": "30", Plants: "27" });
  });

  it("puts each spot into the field that it names, and none into one that nobody has", () => {
    const two = "Lat;Lon;Plants;Paddock\n42,5;-93;27;long eighty\n42;-93;26;Nowhere\n42;-93;25;\n95;-93;25;\n42;x;25;";
    expect(rows(two).map(({ Field, Latitude }) => [Field, Latitude])).toEqual([
      ["Long Eighty", "42.5"],
      ["Mill Road", "42"],
    ]);
    expect(view(two).says.slice(1)).toEqual([
      "Not read: line 3, no field is called “Nowhere”; line 5, no field lies there; line 6, its latitude or longitude is " +
        "no number of degrees.",
    ]);
  });

  it("adds no spot that is there already, nor one twice", () => {
    const once = "Lat,Lon,Plants,Date\n42,-93,27,2031-06-09";
    const [count] = season.standCounts;
    const at = { latitude: new Decimal("42"), longitude: new Decimal("-93.0") };
    const there = { ...season, standCounts: [{ ...count!, date: "2031-06-09", plants: new Decimal("27"), spot: at }] };
    expect(view(once, {}, there)).toMatchObject({
      rows: null,
      says: ["No spot of it is new.", "There already, alike, or twice in the file: 1."],
    });
    expect(view(`${once}\n42,-93,27,2031-06-09`).rows).toHaveLength(1);
  });

  it("of plants by area, or without any, is none", () => {
    expect(view("Lat,Lon,Plants per acre\n42,-93,27000").fault).toMatch(/^“Plants per acre” is plants by area/);
    expect(view("Lat,Lon,Height\n42,-93,27").fault).toBe("No heading says how many plants were counted, so nothing of it is read.");
    expect(view("Item,Amount\nSeed,4").fault).toBe("No line has a latitude and a longitude as headings, so nothing of it is read.");
  });

  it("has acres of a part in the unit that its heading names", () => {
    const acres = (heading: string) => rows(`Lat,Lon,Plants,Part,${heading}\n42,-93,27,Knoll,10`)[0]!["Part acres"];
    expect([acres("Part acres"), acres("Part hectares")]).toEqual(["10", "24.71"]);
  });

  it("is told apart from GeoJSON by its first sign", () => expect("fault" in pointsFile(" {")).toBe(true));
});
