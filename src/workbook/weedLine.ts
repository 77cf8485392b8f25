/** What is said of the weeds of a field in one line, the weakest pass first; all else is opened below it. */
import type { Programme } from "../../core/weeds/programme";

/** "Alder: Waterhemp, no site left in 1 of 5 passes": passes in which no site, else only one, is left against a listed weed. */
export function weedLine({ field, weeds }: Pick<Programme, "field" | "weeds">): string {
  const said = weeds.map(({ weed, sitesLeft }) => {
    if (sitesLeft.length === 0) return `${weed}, no pass`;
    const [none, one] = [0, 1].map((left) => sitesLeft.filter((sites) => sites.length === left).length) as [number, number];
    const passes = `${sitesLeft.length} ${sitesLeft.length === 1 ? "pass" : "passes"}`;
    if (none > 0) return `${weed}, no site left in ${none} of ${passes}`;
    return one > 0
      ? `${weed}, one site left in ${one} of ${passes}`
      : `${weed}, two sites or more in ${sitesLeft.length === 1 ? "its pass" : `all ${passes}`}`;
  });
  return `${field}: ${said.join("; ")}`;
}
