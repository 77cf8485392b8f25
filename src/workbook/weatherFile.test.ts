import { describe, expect, it } from "vitest";
import { weatherFile, type WeatherFile, type WeatherFileUnit } from "./weatherFile";

const acres = { temperature: "F", areaUnit: "ac" } as const;
const read = (text: string, asked: WeatherFileUnit | null = null, units: Parameters<typeof weatherFile>[1] = acres) =>
  weatherFile(text, units, asked);
const days = (file: WeatherFile | null) =>
  file!.days.map(({ date, high, low, rain }) => [date, ...[high, low, rain].map((value) => value?.toFixed() ?? "–")].join(" "));

/** Invented days of an invented station, laid out as the documentation of each file lays them out. */
const byStation = `"STATION","DATE","LATITUDE","NAME","PRCP","PRCP_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"
"XX000000001","2031-05-01","41.0","LARKMERE, FLATS","  254",",,E","  211",",,E","   89",",,E"
"XX000000001","2031-05-02","41.0","LARKMERE, FLATS","    0",",,E","  -50",",,E","",",,E"`;
const canadian = `"Station Name","Larkmere"
"Legend","M","Missing"

"Date/Time","Year","Month","Day","Data Quality","Max Temp (°C)","Max Temp Flag","Min Temp (°C)","Min Temp Flag","Total Precip (mm)","Total Precip Flag"
"2031-05-01","2031","05","01","","21.1","","8.9","","12.7",""
"2031-05-02","2031","05","02","","","M","4.0","","0.0","T"`;

describe("a file of daily weather", () => {
  it("by station is in tenths of a degree Celsius and of a millimetre, known by its columns of attributes", () => {
    const file = read(byStation)!;
    expect([file.says, file.station, file.unread]).toEqual(["tenths of C and mm", "LARKMERE, FLATS", []]);
    // 21.1 °C is 69.98 °F, 8.9 is 48.02, −5 is 23; 25.4 mm is an inch.
    expect(days(file)).toEqual(["2031-05-01 69.98 48.02 1", "2031-05-02 23 – 0"]);
  });

  it("of Canada names its units and may begin with lines about the station", () => {
    expect(read(canadian)!.says).toBe("C and mm");
    expect(days(read(canadian))).toEqual(["2031-05-01 69.98 48.02 0.5", "2031-05-02 – 39.2 0"]);
    expect(days(read(canadian, null, { temperature: "C", areaUnit: "ha" }))).toEqual(["2031-05-01 21.1 8.9 12.7", "2031-05-02 – 4 0"]);
  });

  it("that names no unit is not read until somebody says which", () => {
    const web = `"STATION","NAME","DATE","PRCP","TMAX","TMIN"\n"XX1","LARKMERE","2031-05-01","0.25","62","50"`;
    expect([read(web)!.says, days(read(web))]).toEqual([null, []]);
    expect(days(read(web, "F and in"))).toEqual(["2031-05-01 62 50 0.25"]);
    expect(days(read(web, "F and in", { temperature: "C", areaUnit: "ha" }))).toEqual(["2031-05-01 16.67 10 6.35"]);
  });

  it("loses no line without a word", () => {
    const slips = "Date;High (F);Low (F)\n2031-05-01;70,5;50\nMay 40;70;50\n2031-05-01;71;50\n2031-05-03;hot;50\n2031-05-04;M;50";
    const file = read(slips)!;
    expect(days(file)).toEqual(["2031-05-01 70.5 50 –", "2031-05-04 – 50 –"]);
    expect(file.unread).toEqual([
      { line: 3, why: "“May 40” is no date" },
      { line: 4, why: "2031-05-01 stands there twice" },
      { line: 5, why: "a temperature or the rain is no number" },
    ]);
  });

  it("with days of two stations is for neither place", () => {
    const two = "Station,Date,Max (C),Min (C)\nA,2031-05-01,20,10\nB,2031-05-01,21,11";
    expect(read(two)).toMatchObject({ station: null, days: [], unread: [{ why: "days of 2 stations stand in it; keep those of one" }] });
  });

  it("parted by tabs is read as one parted by commas", () => {
    const file = read("Date\tHigh (°F)\tLow (°F)\tRain (in)\n2031-05-01\t70\t48\t0.5")!;
    expect([file.says, ...days(file)]).toEqual(["F and in", "2031-05-01 70 48 0.5"]);
  });

  it("that has rain in another system than its temperatures says no unit, wherever the rain stands", () => {
    expect(read("Rain (mm),Date,High (°F),Low (°F)\n12.7,2031-05-01,70,48")!.says).toBeNull();
    expect(read("Date,High (°C),Low (°C),Rain (in)\n2031-05-01,21,9,0.5")!.says).toBeNull();
    expect(read("Date,High (°F),Low (°F)\n2031-05-01,70,48")!.says).toBe("F and in");
  });

  it("is none without a date and both temperatures", () => {
    expect(read("Item,Amount\nSeed,4")).toBeNull();
    expect(read("")).toBeNull();
  });
});
