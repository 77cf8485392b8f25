/** What the ready layouts have in common. A layout only proposes lines; every one of them can be changed or struck out. */
import { cautionsOf, type CautionedWork } from "../../cautions";
import type { Decimal } from "../../numbers/decimal";
import type { TrialFinding } from "../../tables/trialFindings";
import type { Area, AreaUnit, Yield, YearlyRate, YieldUnit } from "../../numbers/units";
import { perAcre, type Change, type ChangeLine, type Grain } from "../change";
import type { ChangeEntry } from "../changeEntry";

/** Where the change happens and what its grain is worth. */
export type Circumstances = {
  readonly area: Area;
  readonly areaUnit: AreaUnit;
  readonly yieldUnit: YieldUnit;
  readonly grain: Grain;
  /** Interest on capital a year. */
  readonly rate: YearlyRate;
};

/**
 * Every layout by the name that saved changes keep, with the work at which somebody can be hurt or lose a right: a change keeps it
 * under any name of its own.
 */
export const worksOfLayout = {
  "Other closing wheels": ["planter"],
  Reseed: ["replant"],
  "Rebuild worn row units": ["planter"],
  "Another hybrid": [],
  "Another seeding rate": [],
  "A second site of action in the tank": ["tank"],
  "An extra pass": ["tank"],
  "An earlier weed pass": ["tank"],
  "Own or hire": ["long hours"],
  "A higher rent": [],
  "A later harvest": ["dryer"],
  "Fixed or flexible rent": [],
} as const satisfies Readonly<Record<string, readonly CautionedWork[]>>;
export type LayoutName = keyof typeof worksOfLayout;
export const layoutNames = Object.keys(worksOfLayout) as readonly LayoutName[];

/** What must be read before the work is even weighed. */
export const workCautions = (name: LayoutName): readonly string[] => worksOfLayout[name].flatMap((work) => cautionsOf[work]);

export type Layout = {
  readonly name: LayoutName;
  readonly change: Change;
  /** The entry whose break-even the answer leads with. */
  readonly lead: ChangeEntry;
  readonly findings: readonly TrialFinding[];
  /** Besides those of the work, which `workCautions` knows. */
  readonly cautions: readonly string[];
};

/** The yield that a change adds; blank until the grower enters one. */
export const yieldGain = ({ yieldUnit, areaUnit, grain }: Circumstances, gain: Yield | null, item = "Yield gain"): ChangeLine =>
  perAcre("added returns", { item, unit: `${yieldUnit}/${areaUnit}`, quantity: gain, price: grain });

/** The lines that are there, in order. */
export const lines = (...all: readonly (ChangeLine | null | readonly ChangeLine[])[]): readonly ChangeLine[] =>
  all.flatMap((each) => (each === null ? [] : "quadrant" in each ? [each] : each));

/** A layout with its change made up of the lines. */
export function layout(
  name: LayoutName,
  { area, rate }: Circumstances,
  all: readonly ChangeLine[],
  about: Omit<Layout, "name" | "change">,
): Layout {
  return { name, change: { name, area, rate, lines: all }, ...about };
}

/** A line only where its value is given and is not zero. */
export const given = (value: Decimal | null, line: (value: Decimal) => ChangeLine): ChangeLine | null =>
  value === null || value.isZero() ? null : line(value);
