/** The layout *Another hybrid* begun from what the trials say: the check as the present one, a hybrid as the other. */
import type { HybridComparison } from "../../core/hybrids/comparison";
import { plannedRate, seedPrice } from "../../core/hybrids/seedCost";
import { hybridKey } from "../../core/hybrids/trials";
import { sum, type Decimal } from "../../core/numbers/decimal";
import type { SeasonReport } from "../../workbook/seasonReport";
import type { ChangeStart } from "../change/changeStart";
import { typedAs } from "../parts/typed";

const shortly = (value: Decimal): Decimal => value.toDecimalPlaces(value.abs().gte("10") ? 2 : 4);

/**
 * The yield gain is the trials' mean difference where they show one, and blank where they do not, so that nobody counts on what is
 * within their error. The acres are those that the check is on, else all of the crop.
 *
 * @returns `null` of the check itself and where there is none
 */
export function hybridStart(report: SeasonReport, of: HybridComparison, decimalComma: boolean): ChangeStart | null {
  const { season, figures } = report;
  if (of.check === null || of.isCheck) return null;
  const text = (value: Decimal | null | undefined) => (value === null || value === undefined ? "" : typedAs(shortly(value), decimalComma));
  const rate = plannedRate(season, of.crop);
  const seedOf = (name: string) => {
    const offered = season.hybrids.find((each) => hybridKey(each.name) === hybridKey(name)) ?? null;
    return { price: seedPrice(name, offered, season.items, figures.items), fee: offered?.traitFee ?? null };
  };
  const [now, other] = [seedOf(of.check.name), seedOf(of.hybrid)];
  const grown = season.fields.filter(({ crop, variety }) => crop === of.crop && hybridKey(variety ?? "") === of.check!.key);
  return {
    layout: "Another hybrid",
    target: `crop ${of.crop}`,
    boxes: {
      name: `${of.hybrid} instead of ${of.check.name}`,
      ...(grown.length === 0 ? {} : { acres: text(sum(grown.map(({ area }) => area))) }),
      gain: of.showsNone === false && of.yieldDifference!.low !== null ? text(of.yieldDifference!.mean) : "",
      ...(rate === null ? {} : { nowSeeds: text(rate), otherSeeds: text(rate) }),
      nowPrice: text(now.price?.price),
      nowPerUnit: text(now.price?.seeds),
      nowTrait: text(now.fee),
      otherPrice: text(other.price?.price),
      otherPerUnit: text(other.price?.seeds),
      otherTrait: text(other.fee),
      ...(of.graded === null
        ? {}
        : {
            nowWet: text(of.graded.check.wetPoints),
            nowDiscount: of.graded.check.dock.isZero() ? "" : text(of.graded.check.dock),
            otherWet: text(of.graded.own.wetPoints),
            otherDiscount: of.graded.own.dock.isZero() ? "" : text(of.graded.own.dock),
          }),
    },
  };
}
