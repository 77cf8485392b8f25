import { expect, it } from "vitest";
import { Decimal } from "../../core/numbers/decimal";
import type { FieldWeather } from "../../core/weather/fieldWeather";
import { formatOf } from "../format";
import { maturityLines } from "./maturityView";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const days = (median: string, earliest: string) => ({ median: new Decimal(median), earliest: new Decimal(earliest) });
const field = (name: string, maturity: FieldWeather["maturity"], frostMargin: FieldWeather["frostMargin"] = null): FieldWeather => ({
  field: name,
  place: null,
  from: "2031-05-01",
  to: "2031-06-24",
  days: new Decimal("54"),
  missing: new Decimal("0"),
  heatUnits: new Decimal("600"),
  normal: null,
  earlierYears: new Decimal("5"),
  rain: null,
  rainMissing: new Decimal("0"),
  rating: null,
  stage: null,
  maturity,
  frost: frostMargin === null ? null : { earliest: "09-28", median: "10-08", years: new Decimal("5") },
  frostMargin,
});

it("says when each field matures and how far that is from a freeze, and places it between the record's last day and the year's end", () => {
  // 24 June to 31 December are 190 days: 19 days are a tenth.
  const [home] = maturityLines(
    [field("Home", { date: "2031-09-27", early: "2031-09-08", late: "2031-10-16" }, days("11", "1")), field("Unrated", null)],
    format,
  );
  expect(home).toEqual({
    field: "Home",
    matures: "Sep 27",
    says: "Sep 8 to Oct 16; 11 days before the median freeze, 1 day before the earliest.",
    strip: { early: "40.0", width: "20.0", date: "50.0", freezes: { earliest: "50.5", median: "55.8" } },
  });
});

it("says where some years never come to it, where it falls on the freeze or after it, and where it is there already", () => {
  const [late, there] = maturityLines(
    [
      field("Late", { date: "2031-10-08", early: "2031-09-08", late: null }, days("0", "-10")),
      field("There", { date: "2031-09-08", early: "2031-09-08", late: "2031-09-08" }),
    ],
    format,
  );
  expect(late).toMatchObject({
    says: "Sep 8 or later, in some years not at all; on the day of the median freeze, 10 days after the earliest.",
    strip: { early: "40.0", width: "60.0" },
  });
  expect(there).toMatchObject({ says: "it is there.", strip: { width: "0.0", freezes: null } });
});

it("has nothing to say where no field is rated", () => {
  expect(maturityLines([field("Unrated", null)], format)).toEqual([]);
});
