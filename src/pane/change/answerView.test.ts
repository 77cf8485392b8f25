import { describe, expect, it } from "vitest";
import { countedContent } from "../../../tests/support/paneWorkbook";
import { Decimal } from "../../core/numbers/decimal";
import { changeAnswer } from "../../core/partialBudget/changeAnswer";
import { amountPerAcre, outlay, perAcre, type Change } from "../../core/partialBudget/change";
import { findingsOn } from "../../core/tables/trialFindings";
import { overlays } from "../../core/partialBudget/overlay";
import { area, money, moneyPerUnit, share, yearlyRate, years } from "../../core/numbers/units";
import { seasonReport } from "../../workbook/report";
import { formatOf } from "../format";
import { trialWords } from "../../workbook/changeWords";
import { answerView, leadOf, leadWords } from "./answerView";
import { drawingWords } from "./ChangeDrawing";
import { changePlot } from "./changePlot";
import { comparedLines, overlayView } from "./changesView";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");
const grain = { price: moneyPerUnit("4.35"), moving: moneyPerUnit("0.35"), share: share("1") };
const prices = { low: moneyPerUnit("3.85"), expected: moneyPerUnit("4.35"), high: null };
const gainOf = (quantity: string | null) =>
  perAcre("added returns", { item: "Yield gain", unit: "bu/ac", quantity: quantity === null ? null : new Decimal(quantity), price: grain });
const change = (...lines: Change["lines"]): Change => ({ name: "Wheels", area: area("100"), rate: yearlyRate("0"), lines });
const wheels = outlay("added costs", { item: "Wheels", unit: "row", quantity: new Decimal("8"), price: money("250") }, years("5"));
const viewOf = (of: Change) => {
  const answer = changeAnswer(of, prices);
  return answerView(of, answer, prices, leadOf(of, answer), format);
};

describe("the answer to a change", () => {
  it("leads with the gain needed while the gain is blank, at each price of the crop", () => {
    // 2,000 ÷ 5 years ÷ 100 acres = 4 an acre: 1 bushel at 4.00 brought home, 1.143 at 3.50.
    const view = viewOf(change(gainOf(null), wheels));
    expect(view.lead).toBe("Yield gain needed to pay: 1.0 bu/ac.");
    expect(view.main).toEqual({ figure: "1.0", unit: "bu/ac yield gain needed to pay, at full cost" });
    expect(view.known).toEqual([
      { words: "Yield gain", amount: "open", isLoss: false },
      { words: "cost: wheels", amount: "−4.00", isLoss: true },
    ]);
    expect(view.open).toBe("Yield gain is blank. The rest costs 4.00 USD per acre a year, 400.00 USD on 100 ac.");
    expect([view.stripOf, view.strip]).toEqual([
      "needed",
      [
        { name: "low price, 3.85", cells: ["1.2"] },
        { name: "expected price, 4.35", cells: ["1.0"] },
        { name: "high price, 4.35", cells: ["1.0"] },
      ],
    ]);
  });

  it("says what it comes to once a gain is entered, with quadrants, payback and the strip", () => {
    const view = viewOf(change(gainOf("3"), wheels));
    expect([view.net, view.netUnit, view.open]).toEqual(["+8.00 USD per acre", "a year, 800.00 USD on 100 ac", ""]);
    expect(view.quadrants.map(({ name, cells }) => [name, ...cells])).toEqual([
      ["added returns", "12.00", "1,200.00"],
      ["reduced costs", "0.00", "0.00"],
      ["added costs", "4.00", "400.00"],
      ["reduced returns", "0.00", "0.00"],
    ]);
    expect(view.quadrants[2]!.lines[0]!.detail).toBe("8 row at 250.00 USD, lump sum, over 5 years");
    expect(view.facts).toContainEqual({ name: "Payback", says: "1.67 years; 1.67 with interest" });
    // 4 ÷ 3 + 0.35 = 1.6834, rounded up; 400 a year over 12 an acre.
    expect(view.facts).toContainEqual({ name: "Pays at a price", says: "above 1.69 USD per bu" });
    expect(view.facts).toContainEqual({ name: "Pays on an area", says: "above 33.33 ac" });
    // Brought home: 3.50 and 4.00 a bushel, times 0, 3 and 4.5, less 4. No high price is entered.
    expect(view.grid).toEqual({
      item: "Yield gain",
      columns: ["0 bu/ac", "3 bu/ac", "4.5 bu/ac"],
      rows: [
        { name: "low, 3.85", cells: ["−4.00", "6.50", "11.75"] },
        { name: "expected, 4.35", cells: ["−4.00", "8.00", "14.00"] },
      ],
    });
  });

  it("says how much may be given up, rounded down", () => {
    const given = perAcre("reduced returns", { item: "Yield given up", unit: "bu/ac", quantity: null, price: grain });
    expect(viewOf(change(given, amountPerAcre("reduced costs", "Seed saved", new Decimal("15"), "ac"))).lead).toBe(
      "It pays as long as yield given up is no more than 3.7 bu/ac.",
    );
    expect(viewOf(change(given, amountPerAcre("reduced costs", "Seed saved", new Decimal("15"), "ac"))).main).toEqual({
      figure: "3.7",
      unit: "bu/ac yield given up at most, to pay at full cost",
    });
  });

  it("says so where it pays without a gain, where another entry is blank, and where there is nothing to solve", () => {
    const saves = amountPerAcre("reduced costs", "Pass saved", new Decimal("6"), "ac");
    expect(viewOf(change(gainOf(null), saves)).lead).toBe(
      "It pays even with a yield gain of nothing, and could stand a loss of 1.5 bu/ac.",
    );
    expect(viewOf(change(gainOf(null))).lead).toMatch(/^Enter what it costs or saves/);
    const unpriced = { ...wheels, price: null };
    expect(viewOf(change(gainOf(null), unpriced)).lead).toBe("What it takes to pay is not known yet. Still blank: Wheels.");
    expect(viewOf(change(saves)).lead).toBe("It pays at any area.");
    expect(leadWords(change(gainOf("3"), wheels), { of: "grain price" }, format)).toBe("It pays at a grain price above 1.69 USD per bu.");
    // Three bushels at 4.00 carry 1,200 a year on 100 acres, in five years 6,000 for 8 wheels.
    expect(leadWords(change(gainOf("3"), wheels), { of: "price", line: wheels }, format)).toBe("It pays with Wheels at less than 750.00.");
  });

  it("names figure, kind and source of a trial", () => {
    const findings = findingsOn("closing wheels").map(trialWords);
    expect(findings[0]).toBe(
      "No-till, three sites in Wisconsin: about 2 % more emergence than rubber wheels, no difference in yield. (replicated trial: " +
        "American Society of Agricultural and Biological Engineers, 2020)",
    );
    expect(findings.at(-1)).toContain("12 to 15 bu/ac. (from those who sell or make it:");
  });
});

describe("the drawing of a change", () => {
  const gain = gainOf("3");
  it("crosses nothing at the gain needed, and marks what is entered", () => {
    const plot = changePlot(change(gain, wheels), gain)!;
    // From −4 at no gain to 4 × 5 − 4 = 16 at 5 bushels: nothing at a fifth of the way, 8 at three fifths.
    expect(plot).toMatchObject({
      line: { from: ["0.00", "100.00"], to: ["100.00", "0.00"] },
      zero: "80.00",
      crossing: { x: "20.00", pays: "above" },
      now: { x: "60.00", y: "40.00" },
    });
    expect(drawingWords(plot, gain, format)).toBe(
      "Net change from −4.00 to 16.00 USD per acre as yield gain goes from 0 to 5 bu/ac; pays from 1.0; 8.00 as entered.",
    );
  });
  it("reaches below nothing where a loss can be borne", () => {
    const blank = gainOf(null);
    expect(
      changePlot(change(blank, amountPerAcre("reduced costs", "Pass saved", new Decimal("6"), "ac")), blank)!.gains.from.toString(),
    ).toBe("-2");
  });
  it("is left out where the net change is not known", () => {
    const blank = gainOf(null);
    expect(changePlot(change(blank, { ...wheels, price: null }), blank)).toBeNull();
  });
});

describe("the changes of a season", () => {
  const { figures } = seasonReport(countedContent);
  it("stand a line each", () => {
    // 8 × 320 × 0.2373964004 ÷ 198.5 = 3.0617 over 4.13; seed 0.2 × 61 less 0.5 × 10.15 × 0.6.
    expect(comparedLines(figures.changes, format)).toEqual([
      { name: "Closing wheels, spiked", about: "Corn, 198.5 ac", isCounted: false, needs: "0.8 bu/ac", net: "open", isLoss: false },
      { name: "Fewer soybean seeds", about: "Soybeans, 64 ac", isCounted: true, needs: "up to 2.0 bu/ac", net: "+9.16", isLoss: false },
    ]);
  });
  it("are laid over what is projected where they are counted in, and an open one leaves it open", () => {
    const [soybeans] = figures.overlays;
    const view = overlayView(soybeans!, format);
    expect(view.rows.map(({ name }) => name)).toEqual(["Projected", "Fewer soybean seeds", "With the changes counted in"]);
    expect(view.rows[1]!.cells).toEqual(["9.16", "585.92"]);
    const both = overlays(
      figures.crops,
      figures.changes.map((each) => ({ ...each, change: { ...each.change, countedIn: true } })),
    );
    const corn = overlayView(
      both.find(({ crop }) => crop === "Corn")!,
      format,
    );
    expect([corn.rows.at(-1)!.cells, corn.note]).toEqual([
      ["–", "–"],
      "Closing wheels, spiked: an entry is blank, so what it adds is not known.",
    ]);
  });
});
