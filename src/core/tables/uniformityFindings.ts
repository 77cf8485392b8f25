/**
 * What publications say of uneven stands, to stand beside the entry of a uniformity loss. None of it is ever applied by
 * itself. Percent of yield unless the unit says otherwise.
 */
import { Decimal } from "../numbers/decimal";
import type { Source } from "./source";

export type UniformityFinding = {
  readonly finding: string;
  readonly low: Decimal;
  readonly high: Decimal;
  readonly unit: "% of yield" | "bu/ac per inch of spacing deviation above 2 in";
  readonly source: Source;
};

const iowa: Source = {
  title: "Corn Replant Decisions (East-Central and Southeast Iowa Crop Information)",
  publisher: "Iowa State University Extension",
  year: "2004",
  address: "http://www.extension.iastate.edu/Pages/eccrops/cu040524.html",
  where: "text",
};
const minnesota: Source = {
  title: "Early planted corn: higher yields, greater profits",
  publisher: "Corn+Soybean Digest, reporting University of Minnesota Extension",
  year: "2003",
  address: "http://cornandsoybeandigest.com/print/early-planted-corn-higher-yields-greater-profits",
  where: "text; its 2 % for plants 20 days late contradicts its own 8 % and is left out",
};
const northDakota: Source = {
  title: "Skips, Doubles and Late Emerged Corn",
  publisher: "North Dakota Corn Utilization Council, reporting North Dakota State University",
  year: "2016",
  address: "http://www.ndcorn.org/skips-doubles-late-emerged-corn-july-7-2016/",
  where: "text; doi 10.4236/as.2018.910092",
};
const spacing: Source = {
  title: "Estimating Corn Yield Losses from Unevenly Spaced Planting (SSMG-37)",
  publisher: "Potash & Phosphate Institute",
  year: "about 2000",
  address: "http://ppi-far.org/ppiweb/ppibase.nsf/$webindex/article=F32ECE3785256AB5006B900F430487F7",
  where: "summary; an Illinois and an Indiana trial found no effect",
};

const finding = (text: string, low: string, high: string, unit: UniformityFinding["unit"], source: Source): UniformityFinding => ({
  finding: text,
  low: new Decimal(low),
  high: new Decimal(high),
  unit,
  source,
});

export const uniformityFindings: readonly UniformityFinding[] = [
  finding("small gaps of 1 to 3 ft", "2", "2", "% of yield", iowa),
  finding("many gaps of 4 to 6 ft", "4", "6", "% of yield", iowa),
  finding("a quarter of the plants 10 days late", "6", "6", "% of yield", minnesota),
  finding("half of the plants 10 days late", "8", "8", "% of yield", minnesota),
  finding("a tenth of the plants skipped (16 of 200 bu)", "8", "8", "% of yield", northDakota),
  finding("uneven spacing in the row", "0", "4", "bu/ac per inch of spacing deviation above 2 in", spacing),
];

/** Gain of each plant beside a skip (North Dakota, 16 environments): 11 %. A skip so costs 0.78 of a plant. */
const neighbourGain = new Decimal("0.11");

/** Yield lost to skips: yield × share of plants skipped × (1 − 2 × the neighbours' gain). */
export const lossToSkips = (yieldHere: Decimal, skipped: Decimal): Decimal =>
  yieldHere.times(skipped).times(new Decimal("1").minus(neighbourGain.times("2")));
