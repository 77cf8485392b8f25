/**
 * The outlook of the crops with the changes laid over it that are counted in.
 *
 * A change charges its outlays by capital recovery, as the full layer charges machines; so it is laid over the net
 * return at full cost. The budgets themselves stay as they are.
 */
import { sum, zero, type Decimal } from "../numbers/decimal";
import type { CropFigures } from "../figures";
import { money, moneyPerArea, type Area, type Money, type MoneyPerArea } from "../numbers/units";
import type { ChangeFigures } from "./changeFigures";

/** Net return at full cost, per area of the crop and on all of it. */
type NetReturn = { readonly perArea: MoneyPerArea; readonly inAll: Money };

/** What one change that is counted in adds to one crop. `null`: one of its entries is blank. */
type AddedByChange = { readonly change: string; readonly perArea: MoneyPerArea | null; readonly inAll: Money | null };

export type CropOverlay = {
  readonly crop: string;
  readonly area: Area;
  readonly outlook: NetReturn;
  readonly added: readonly AddedByChange[];
  /** The outlook and what the changes add; `null` while an entry of one of them is blank. */
  readonly withChanges: NetReturn | null;
};

/**
 * Every crop that a change counted in is about. A change about a field or a crop belongs to that crop; one about the whole
 * farm is shared by all crops, by the land of each.
 */
export function overlays(crops: readonly CropFigures[], changes: readonly ChangeFigures[]): readonly CropOverlay[] {
  const countedIn = changes.filter(({ change }) => change.countedIn);
  const whole = sum(crops.map(({ land }) => land));
  return crops.flatMap((crop): readonly CropOverlay[] => {
    const concerned = countedIn.filter((each) => each.crop === null || each.crop === crop.crop);
    if (concerned.length === 0) return [];
    const added = concerned.map((each): AddedByChange => {
      const { perYear } = each.net.net;
      const inAll = perYear === null ? null : each.crop === null ? perYear.times(crop.land).div(whole) : perYear;
      return { change: each.change.name, ...amounts(inAll, crop.area) };
    });
    const outlook = crop.outlook.netPerArea.full;
    const known = added.every(({ inAll }) => inAll !== null);
    const total = outlook.times(crop.area).plus(sum(added.map(({ inAll }) => inAll ?? zero)));
    return [
      {
        crop: crop.crop,
        area: crop.area,
        added,
        outlook: { perArea: outlook, inAll: money(outlook.times(crop.area)) },
        withChanges: known ? { perArea: moneyPerArea(total.div(crop.area)), inAll: money(total) } : null,
      },
    ];
  });
}

const amounts = (inAll: Decimal | null, area: Area) => ({
  inAll: inAll === null ? null : money(inAll),
  perArea: inAll === null ? null : moneyPerArea(inAll.div(area)),
});
