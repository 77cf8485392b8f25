/** The question whether to reseed, as it is being typed: prefilled from the counts and the season, every entry open to change. */
import { daysAfter } from "../../core/numbers/day";
import { sum, zero, type Decimal } from "../../core/numbers/decimal";
import { grainBeforeDrying } from "../../core/partialBudget/grain";
import type { ReseedQuestion } from "../../core/reseed";
import type { FieldStand, PartStand } from "../../core/stand/fieldStand";
import type { StandSummary } from "../../core/stand/standSummary";
import { area, moneyPerArea, moneyPerUnit, plantsPerArea, points, type PlantsPerArea } from "../../core/numbers/units";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Typed, typedAs, type Faults } from "../parts/typed";

const reseedCostFields = ["endOldStand", "seed", "seedCredit", "pass", "treatment", "herbicide", "other", "insurance"] as const;
const reseedFields = [
  "area",
  "stand",
  "date",
  "newStand",
  "price",
  "drying",
  "keptPoints",
  "newPoints",
  "allowance",
  ...reseedCostFields,
] as const;
export type ReseedField = (typeof reseedFields)[number];
export type ReseedDraft = { readonly [F in ReseedField]: string };

/** Days from the last count until a field can be seeded again, as the form begins; the date is there to be changed. */
const daysToReseed = 3;

/** What is asked about: a field as it was counted, and the part of it; `null`: all of it. */
export type ReseedSubject = { readonly stand: FieldStand; readonly part: PartStand | null };

/** The counts that speak of it; the field's where nobody counted in the part. */
export const countsOf = ({ stand, part }: ReseedSubject): StandSummary => part?.summary ?? stand.summary;

/**
 * From the counts: the whole field or the part, its mean stand, the target stand again three days after the counts; the season's
 * price and moisture; seed as it cost the first time. All other costs, the insurance and the allowance are blank.
 */
export function emptyReseed({ season, figures }: SeasonReport, subject: ReseedSubject, decimalComma: boolean): ReseedDraft {
  const { field } = subject.stand;
  const summary = countsOf(subject);
  const crop = season.crops.find(({ name }) => name === field.crop)!;
  const mine = figures.crops.flatMap(({ fields }) => fields).find((each) => each.field === field.name)!;
  const seed = sum(mine.outlook.charges.filter(({ kind }) => kind === "seed").map(({ amount }) => amount)).div(field.area);
  const { expectedHarvestMoisture: harvested, standardMoisture: standard } = crop;
  const wet = harvested === null || standard === null || harvested.lte(standard) ? zero : harvested.minus(standard);
  const text = (value: Decimal | null, places: 0 | 2 = 2) => (value === null ? "" : typedAs(value.toDecimalPlaces(places), decimalComma));
  return {
    area: text(subject.part?.area ?? field.area),
    stand: text(summary.mean, 0),
    date: daysAfter(summary.to, daysToReseed),
    newStand: text(field.targetStand, 0),
    price: text(crop.price),
    drying: typedAs(season.settings.dryingChargePerPoint ?? zero, decimalComma),
    keptPoints: text(wet),
    newPoints: text(wet),
    allowance: "",
    endOldStand: "",
    seed: seed.isZero() ? "" : text(seed),
    seedCredit: "",
    pass: "",
    treatment: "",
    herbicide: "",
    other: "",
    insurance: "",
  };
}

/** The question that the boxes ask, or what is wrong with them. */
export function reseedQuestion(
  draft: ReseedDraft,
  report: SeasonReport,
  { stand, part }: ReseedSubject,
  decimalComma: boolean,
): { readonly faults: Faults<ReseedField>; readonly question: ReseedQuestion | null } {
  const { season, figures } = report;
  const { field, table } = stand;
  const typed = new Typed<ReseedField>(draft, decimalComma, season.settings.currency);
  const land = typed.number("area", { needed: true, aboveZero: true });
  const all = part?.area ?? field.area;
  if (land?.gt(all)) typed.faults.area = `The ${part === null ? "field" : "part"} has ${all.toString()}.`;
  const kept = typed.number("stand", { needed: true });
  const date = typed.day("date");
  const newStand = typed.number("newStand", { needed: true, aboveZero: true });
  const [price, drying, keptPoints, newPoints] = [
    typed.number("price", { needed: true }),
    typed.number("drying"),
    typed.number("keptPoints"),
    typed.number("newPoints"),
  ];
  const allowance = typed.number("allowance", { isPercent: true });
  if (allowance?.gt("100")) typed.faults.allowance = "Enter a percentage from 0 to 100.";
  const cost = (of: (typeof reseedCostFields)[number]) => {
    const amount = typed.number(of);
    return amount === null ? null : moneyPerArea(amount);
  };
  const costs = {
    endOldStand: cost("endOldStand"),
    seed: cost("seed"),
    seedCredit: cost("seedCredit"),
    pass: cost("pass"),
    treatment: cost("treatment"),
    herbicide: cost("herbicide"),
    other: cost("other"),
  };
  const insurance = cost("insurance");
  if (!typed.isSound || table === null || land === null || kept === null || date === null || newStand === null || price === null)
    return { faults: typed.faults, question: null };
  const budget = figures.crops.flatMap(({ fields }) => fields).find((each) => each.field === field.name)!.outlook.budget;
  const { moving, share, rentShare } = grainBeforeDrying(budget);
  const { areaUnit } = season.settings;
  const { rowWidth } = field;
  return {
    faults: {},
    question: {
      table,
      area: area(land),
      goal: field.yieldGoal,
      costs,
      insurance,
      moving,
      share,
      ...(rentShare !== undefined && { rentShare }),
      planned: { date: field.plannedPlanting ?? field.planted, stand: field.targetStand as PlantsPerArea | null, rowWidth, areaUnit },
      kept: { date: part?.planted ?? field.planted ?? field.plannedPlanting, stand: plantsPerArea(kept), rowWidth, areaUnit },
      reseeded: { date, stand: plantsPerArea(newStand), rowWidth, areaUnit },
      keptUniformityLoss: field.uniformityLoss,
      reseedAllowance: allowance,
      price: moneyPerUnit(price),
      dryingPerPoint: moneyPerUnit(drying ?? zero),
      keptPoints: points(keptPoints ?? zero),
      reseededPoints: points(newPoints ?? zero),
    },
  };
}
