import { expect } from "vitest";
import { Decimal } from "../../src/core/numbers/decimal";

/**
 * Asserts that `actual` is the figure a table prints: rounded half-up to as many decimals as are printed.
 * The tolerance is thus the table's own, never one that was tuned until the test passed.
 */
export function expectPrinted(actual: Decimal | null, printed: string): void {
  const decimals = printed.split(".")[1]?.length ?? 0;
  expect(actual?.toFixed(decimals, Decimal.ROUND_HALF_UP)).toBe(printed.replaceAll(",", ""));
}
