import { describe, expect, it } from "vitest";
import { item, seasonOf } from "../../tests/support/season";
import { type Decimal, one } from "../core/numbers/decimal";
import { amountPerAcre } from "../core/partialBudget/change";
import type { LayoutName } from "../core/partialBudget/layouts/layout";
import type { SeasonChange } from "../core/partialBudget/seasonChange";
import { area, yearlyRate } from "../core/numbers/units";
import { changeCautions, changeFindings, findingsMark } from "./changeWords";

const named = (name: string, ...items: readonly string[]): SeasonChange => ({
  name,
  area: area("100"),
  rate: yearlyRate("0"),
  target: null,
  layout: null,
  countedIn: false,
  lines: items.map((each) => ({ ...amountPerAcre("added costs", each, one, "ac"), sellsCrop: false })),
});
const season = seasonOf({ items: [item("Partner B", "9", { kind: "crop protection" }), item("Urea", "0.3")] });
const cautions = (change: SeasonChange, quantity: Decimal | null = one) =>
  changeCautions({ change, gain: { ...amountPerAcre("added returns", "Gain", one, "ac"), quantity } }, season).map((words) =>
    words.split(" ").slice(0, 3).join(" "),
  );

const planning = "Figures are for";
const planter = ["Under a planter:", "Discs are sharp", "Before the road:", "The operator's manual"];
const tank = ["The label is", "Before you mix:"];
const replant = ["Ask your insurer's", "Your policy may", "The labels of"];

describe("the cautions beside a change", () => {
  it("are, of one that somebody typed, those of the work that its words tell of, and the one for planning always", () => {
    expect(cautions(named("Lime", "Urea"))).toEqual([planning]);
    expect(cautions(named("Lime"), null)).toEqual(["The yield gain", planning]);
    expect(cautions(named("Parts", "Gauge wheels"))).toEqual([...planter, planning]);
    expect(cautions(named("Fungicide"))).toEqual([...tank, planning]);
    expect(cautions(named("Tank", "partner b"))).toEqual([...tank, planning]);
    expect(cautions(named("Replant Home"))).toEqual([...replant, planning]);
  });

  it("go by the layout that the change came from, whatever it is called, and not by the words of its name", () => {
    const renamed = (layout: LayoutName, name: string, ...items: readonly string[]) => cautions({ ...named(name, ...items), layout });
    expect(renamed("Other closing wheels", "Spring idea")).toEqual([...planter, planning]);
    expect(renamed("Reseed", "Home, second try")).toEqual([...replant, planning]);
    expect(renamed("A second site of action in the tank", "June")).toEqual([...tank, planning]);
    expect(renamed("A higher rent", "Planter shed by the replant field")).toEqual([planning]);
  });

  it("have one line for ammonia, a dryer, a bin and long hours, where a line is about them", () => {
    expect(cautions(named("Nitrogen", "Anhydrous ammonia"))).toEqual(["Ammonia: goggles, gloves", planning]);
    expect(cautions(named("Later harvest", "Drying spared", "Bin rent", "Labour"))).toEqual([
      "Dryer: gas, flame",
      "Bin: nobody goes",
      "Long hours: tired",
      planning,
    ]);
    expect(cautions({ ...named("Combine"), layout: "Own or hire" })).toEqual(["Long hours: tired", planning]);
  });
});

describe("the findings beside a change", () => {
  it.each([
    ["Closing wheels", "closing wheels"],
    ["Down force", "down force"],
    ["Openers", "row unit wear"],
    ["Another seeding rate", "seeding rate"],
    ["Another hybrid", "hybrid"],
    ["Fungicide", "fungicide"],
    ["Pinch rows", "wheel traffic"],
  ])("of %s are on %s", (name, subject) => {
    const found = changeFindings(named(name));
    expect(found.length).toBeGreaterThan(0);
    expect(new Set(found.map((each) => each.subject))).toEqual(new Set([subject]));
  });
  it("follow the layout under another name, and say beside the gain how many found nothing", () => {
    const found = changeFindings({ ...named("Spring idea"), layout: "Other closing wheels" });
    expect(new Set(found.map(({ subject }) => subject))).toEqual(new Set(["closing wheels"]));
    expect(findingsMark(found)).toBe(
      `Of ${found.length} trials and reports known here, ${found.filter(({ noDifference }) => noDifference).length} found no difference.`,
    );
    expect(findingsMark([])).toBe("");
  });
  it("are none where no trial is known", () => {
    expect(changeFindings(named("A shed"))).toEqual([]);
  });
});
