import { describe, expect, it } from "vitest";
import { Decimal } from "../../core/numbers/decimal";
import { neededCell } from "./needed";

describe("neededCell", () => {
  const shown = (value: string, pays: "above" | "below", places: 1 | 2) => neededCell({ value: new Decimal(value), pays }, places).value;

  it("rounds to the side that still pays", () => {
    expect([shown("8.01", "above", 1), shown("8.09", "below", 1), shown("24.241", "above", 2), shown("24.249", "below", 2)]).toEqual([
      8.1, 8, 24.25, 24.24,
    ]);
  });

  it("leaves a value that is whole but for the end of a division", () => {
    expect([shown("0.50000000000000000001", "above", 1), shown("0.49999999999999999999", "below", 1)]).toEqual([0.5, 0.5]);
  });
});
