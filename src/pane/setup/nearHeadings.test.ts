import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inputTables } from "../../workbook/templates";
import { plain } from "../../workbook/words";
import { firstMatching } from "./matchView";
import { nearHeadings, proposalWords, tradeWord } from "./nearHeadings";

const near = (table: string, headings: readonly string[]) => {
  const model = inputTables.find(({ name }) => name === table)!;
  return Object.fromEntries(nearHeadings(model, headings, firstMatching(model, headings)));
};
/** The words of every heading, declared with its column or listed beside. */
const allWords = [...inputTables.flatMap(({ columns }) => columns.map(({ words = [] }) => words))];
const ourHeadings = inputTables.flatMap(({ columns }) => columns.map(({ heading }) => heading));

describe("headings that may mean a column of ours", () => {
  it("are the words that farm records use, whatever their signs and capitals", () => {
    expect(near("Purchases", ["Date", "Product", "Qty.", "U.O.M.", "Unit cost ($)", "Total", "Vendor", "Comments"])).toEqual({
      Item: "Product",
      Quantity: "Qty.",
      Unit: "U.O.M.",
      "Unit price": "Unit cost ($)",
      Amount: "Total",
      Supplier: "Vendor",
      Note: "Comments",
    });
    expect(near("Fields", ["Field name", "Crop", "Ac.", "Var.", "Target yield", "Rent/ac", "APH"])).toEqual({
      Field: "Field name",
      Acres: "Ac.",
      "Hybrid or variety": "Var.",
      "Yield goal": "Target yield",
      "Rent per acre": "Rent/ac",
      "Proven yield": "APH",
    });
    expect(near("Harvest", ["Field", "Date", "Bu", "Mst", "TW"])).toEqual({
      "Weight or bushels": "Bu",
      Moisture: "Mst",
      "Test weight": "TW",
    });
  });

  it("are the short words of dealers' invoices and of field lists", () => {
    expect(near("Purchases", ["Inv. date", "Description", "Qty shipped", "U/M", "Unit cost", "Ext. price", "Dealer"])).toEqual({
      Date: "Inv. date",
      Item: "Description",
      Quantity: "Qty shipped",
      Unit: "U/M",
      "Unit price": "Unit cost",
      Amount: "Ext. price",
      Supplier: "Dealer",
    });
    expect(near("Fields", ["Field", "Crop", "Acres", "Goal bu/ac"])).toEqual({ "Yield goal": "Goal bu/ac" });
  });

  it.each<readonly [string, readonly string[]]>([
    [
      "Crops",
      [
        "Commodity = Crop",
        "U.O.M. = Yield unit",
        "Lbs/bu = Weight per bu",
        "Base moisture = Standard moisture",
        "Budget price = Expected price",
      ],
    ],
    [
      "Crops",
      [
        "Marketing cost = Per-unit selling cost",
        "Program payments = Other income per acre",
        "Harvest moisture = Expected harvest moisture",
      ],
    ],
    [
      "Fields",
      [
        "Variety = Hybrid or variety",
        "Seeding rate = Seeds dropped",
        "Final stand = Target stand",
        "Own/rent = Tenure",
        "Max. rent = Most rent",
      ],
    ],
    ["Fields", ["Land cost = Land charge per acre", "Crop share = Operator share of crop %", "Base income = Base gross per acre"]],
    [
      "Items",
      [
        "Container = Pack name",
        "Package size = Pack size",
        "Size unit = Pack unit",
        "Budget price = Plan price per pack",
        "Grade = Analysis N-P-K",
      ],
    ],
    ["Operations", ["Trips = Passes", "Task = Operation", "Implement = Machine"]],
    ["Harvest", ["Gross weight = Gross", "Empty = Tare", "Elevator = Buyer", "Scale ticket = Ticket", "H2O = Moisture"]],
    [
      "Hybrids",
      ["Price per unit = Price per bag", "Kernels per bag = Seeds per bag", "Royalty = Trait fee per acre", "CHU = Heat units to maturity"],
    ],
    [
      "Hybrid_trials",
      ["Location = Trial", "Harvest year = Year", "Dry yield = Yield", "LSD 0.05 = Trial LSD", "Lodging = Lodged %", "Sponsor = Source"],
    ],
    [
      "Stand_counts",
      ["Feet = Length", "Plant count = Plants", "Lat. = Latitude", "Lon. = Longitude", "Zone = Part", "Zone acres = Part acres"],
    ],
    ["Weather", ["Station = Place", "Tmax = High", "Tmin = Low", "Precip. = Rain"]],
    ["Weeds", ["Species = Weed", "Resistance = Resistant to", "Scouted = Seen on"]],
    [
      "Planter_checks",
      ["Planter = Machine", "Row unit = Row", "Component = Part", "Wear limit = Replace at", "Reading = Measured", "Repaired = Done on"],
    ],
    ["Loans", ["Outstanding = Balance", "Installment = Payment", "Due date = Next due", "Pmts per year = Payments a year"]],
    ["Insurance", ["APH = Approved yield", "Level = Coverage", "Base price = Projected price", "Fall price = Harvest price"]],
    ["Past_seasons", ["Year = Season", "Goal = Yield goal", "Actual yield = Yield", "Average price = Price"]],
    ["Purchases", ["Seller = Supplier", "Date paid = Paid on", "Shipping = Freight", "Discount = Rebate", "Crop year = For season"]],
    ["Sales", ["Delivery = Delivery month", "Qty = Quantity"]],
    ["Budget", ["Category = Kind"]],
  ])("are what sheets of growers, elevators and weather stations say: %s", (table, pairs) => {
    const expected = pairs.map((pair) => pair.split(" = ") as [string, string]);
    expect(
      near(
        table,
        expected.map(([own]) => own),
      ),
    ).toEqual(Object.fromEntries(expected.map(([own, ours]) => [ours, own])));
  });

  it("are no labels of columns that only a program writes: numbers of fields, units of rates", () => {
    expect(near("Fields", ["Field ID", "Field no.", "Tillable acres", "Dropped population"])).toEqual({});
    expect(near("Applications", ["Field ID", "App rate", "Rate UOM"])).toEqual({});
  });

  it("are plurals and slips of the pen, but no short word for another", () => {
    expect(near("Purchases", ["Dates", "Quantitiy", "Frieghts", "Suplier", "Unot price"])).toEqual({
      Date: "Dates",
      Quantity: "Quantitiy",
      Supplier: "Suplier",
      "Unit price": "Unot price",
    });
    expect(near("Purchases", ["Delivered", "Lot", "Field", "Rate", "Iten"])).toEqual({});
    expect(near("Sales", ["Rate"])).toEqual({});
  });

  it("are left to the grower where two may mean the same, or one two columns, one of them matched or not", () => {
    expect(near("Purchases", ["Price", "Unit cost"])).toEqual({});
    expect(near("Purchases", ["Cost"])).toEqual({});
    expect(near("Purchases", ["Amount", "Cost"])).toEqual({});
    expect(near("Other_costs", ["Cost"])).toEqual({ Amount: "Cost" });
    expect(near("Fields", ["Planting date", "Population", "Yield"])).toEqual({});
    expect(near("Applications", ["Crop", "Field", "Unit"])).toEqual({ "Rate unit": "Unit" });
    expect(near("Crops", ["Prices"])).toEqual({});
  });

  it("are words of the trade before they are slips", () => {
    expect(near("Fields", ["Planned date"])).toEqual({ "Planned planting date": "Planned date" });
  });

  it("are none that stand for a column already", () => {
    expect(near("Purchases", ["Unit price", "Price", "Amount", "Total"])).toEqual({});
  });

  it("are proposed once each, whatever the headings", () => {
    const words = [...new Set([...allWords.flat(), ...ourHeadings])];
    fc.assert(
      fc.property(fc.constantFrom(...inputTables), fc.uniqueArray(fc.constantFrom(...words), { maxLength: 30 }), (table, headings) => {
        const first = firstMatching(table, headings);
        const together = [...first, ...nearHeadings(table, headings, first)].filter(([, own]) => own !== "");
        expect(new Set(together.map(([, own]) => own)).size).toBe(together.length);
        expect(new Set(together.map(([column]) => column)).size).toBe(together.length);
      }),
    );
  });
});

it("gives other words to headings, spelled as they are compared", () => {
  for (const words of allWords) {
    expect(words.map((word) => plain(tradeWord(word)))).toEqual(words);
    // A heading that is blank, or a mark alone, stands for nothing.
    expect(words.filter((word) => !/[a-z]/.test(word))).toEqual([]);
  }
});

it("says what it proposes in words", () => {
  expect(
    proposalWords(
      new Map([
        ["Quantity", "Qty"],
        ["Supplier", "Vendor"],
      ]),
    ),
  ).toBe("“Qty” for Quantity, “Vendor” for Supplier");
});
