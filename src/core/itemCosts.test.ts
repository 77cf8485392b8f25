import { describe, expect, it } from "vitest";
import { application, field, item, purchase, seasonOf } from "../../tests/support/season";
import { seasonFigures } from "./seasonFigures";
import type { EntryRef } from "./row";
import type { Season } from "./season";

const figuresOf = (parts: Partial<Season>) =>
  seasonFigures(
    seasonOf({
      fields: [field("Home", "100", "200")],
      ...parts,
      applications: (parts.applications ?? []).map((each, index) => ({ ...each, source: { table: "Applications", row: index + 1 } })),
    }),
  );
const named = (entries: readonly EntryRef[]) => entries.map(({ table, row }) => `${table} ${row}`);
const diesel = item("Diesel", "3", { kind: "fuel", charged: "by acres" });

describe("an item that is charged as it is bought", () => {
  const outlook = (bought: string) => {
    const { crops, items } = figuresOf({
      items: [diesel],
      purchases: [purchase("Diesel", bought, "800")],
      applications: [application("Diesel", "Home", "2", "plan"), application("Diesel", "Home", "1", "done")],
    });
    return { charge: crops[0]!.fields[0]!.outlook.charges[0]!, figures: items[0]! };
  };

  it("names its invoices, and the plan too while that takes more than is bought", () => {
    expect(named(outlook("200").charge.entries)).toEqual(["Purchases 1"]);
    // Half of the 200 gallons planned is still to be bought, at the 8.00 paid.
    expect([outlook("100").charge.amount.toFixed(), ...named(outlook("100").charge.entries)]).toEqual([
      "1600",
      "Purchases 1",
      "Applications 1",
    ]);
  });

  it("names every row that it is in, beside what is bought and used", () => {
    expect(named(outlook("200").figures.entries)).toEqual(["Purchases 1", "Applications 1", "Applications 2"]);
  });
});
