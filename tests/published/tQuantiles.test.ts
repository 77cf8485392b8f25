import { describe, expect, it } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";
import { tQuantile } from "../../src/core/stand/tQuantile";
import { check, checksPage } from "./checks";
import { sources } from "./sources";
import { recalled, tQuantiles } from "./tQuantiles";

describe("Student's t", () => {
  it.each(tQuantiles)("within %s at %s degrees of freedom is %s", (confidence, freedom, printed) => {
    check(tQuantile(new Decimal(freedom), new Decimal(confidence)), printed, sources["scipy 1.17.1"], tQuantile);
  });

  it("is the 2.776 of every printed table at 4 degrees of freedom", () => {
    check(tQuantile(new Decimal(recalled.freedom), new Decimal(recalled.confidence)), recalled.printed, sources["t table"], tQuantile);
  });

  it("refuses what has no quantile", () => {
    expect(() => tQuantile(new Decimal("0"), new Decimal("0.95"))).toThrow(RangeError);
    expect(() => tQuantile(new Decimal("2.5"), new Decimal("0.95"))).toThrow(RangeError);
    expect(() => tQuantile(new Decimal("4"), new Decimal("1"))).toThrow(RangeError);
    expect(() => tQuantile(new Decimal("4"), new Decimal("0"))).toThrow(RangeError);
  });
});

checksPage("Student's t");
