/** What is said of the weeds of a field in one line, the weakest pass first; all else is opened below it. */
import type { Programme } from "../core/weeds/programme";

/**
 * "Alder: Waterhemp, no site left in 1 of 3 passes": of the passes done and those still to be done, in how many no site, else only
 * one, is left against a listed weed. A planned pass that was done is not another one.
 */
export function weedLine({ field, passes, weeds }: Pick<Programme, "field" | "passes" | "weeds">): string {
  const said = weeds.map(({ weed, sitesLeft: inEach }) => {
    const sitesLeft = inEach.filter((_, index) => passes[index]!.status === "done" || passes[index]!.isOpen);
    if (sitesLeft.length === 0) return `${weed}, no pass`;
    const [none, one] = [0, 1].map((left) => sitesLeft.filter((sites) => sites.length === left).length) as [number, number];
    const counted = `${sitesLeft.length} ${sitesLeft.length === 1 ? "pass" : "passes"}`;
    if (none > 0) return `${weed}, no site left in ${none} of ${counted}`;
    return one > 0
      ? `${weed}, one site left in ${one} of ${counted}`
      : `${weed}, two sites or more in ${sitesLeft.length === 1 ? "its pass" : `all ${counted}`}`;
  });
  return `${field}: ${said.join("; ")}`;
}
