import { dryingPerUnit } from "../../weather/drydown";
import type { Wetness } from "../../season";
import { moneyPerUnit, type MoneyPerUnit, type Points, type Share, type Yield } from "../../numbers/units";
import { amountPerAcre, perAcre, type Grain } from "../change";
import { given, layout, lines, type Circumstances, type Layout } from "./layout";

export type LaterHarvest = Circumstances & {
  /** What stands now, at standard moisture. */
  readonly yieldNow: Yield;
  readonly now: Points;
  /** At the later harvest, not above the moisture now. */
  readonly later: Points;
  readonly standard: Points;
  readonly chargePerPoint: MoneyPerUnit;
  readonly countedOn: Wetness;
  /** The part of the yield that waiting loses; blank: the answer is how much it may be. */
  readonly lost: Share | null;
};

/**
 * Waiting for the field to dry the crop, against the dryer. What is lost by waiting is not sold, hauled or dried. `grain` is
 * without drying.
 *
 * @throws RangeError where the crop would be wetter later: the form turns it away
 */
export function laterHarvest(of: LaterHarvest): Layout {
  const { yieldNow, now, later, standard, chargePerPoint, countedOn, lost, grain, yieldUnit, areaUnit } = of;
  if (later.gt(now)) throw new RangeError("a crop that waits is no wetter");
  const [dryingNow, dryingLater] = [now, later].map((moisture) => dryingPerUnit(moisture, standard, chargePerPoint, countedOn)) as [
    MoneyPerUnit,
    MoneyPerUnit,
  ];
  const driedLater: Grain = { ...grain, moving: moneyPerUnit(grain.moving.plus(dryingLater)) };
  const left = perAcre("reduced returns", {
    item: "Yield lost by waiting",
    unit: `${yieldUnit}/${areaUnit}`,
    quantity: lost === null ? null : yieldNow.times(lost),
    price: driedLater,
  });
  return layout(
    "A later harvest",
    of,
    lines(
      given(dryingNow.minus(dryingLater).times(yieldNow).times(grain.share), (spared) =>
        amountPerAcre("reduced costs", "Drying spared", spared, areaUnit),
      ),
      left,
    ),
    {
      lead: { of: "quantity", line: left },
      findings: [],
      cautions: [
        "What waiting loses differs by year and field: eight experiments in Ohio lost 5 to 24 % by mid December. Push some stalks " +
          "before you wait; weak ones are cut first.",
      ],
    },
  );
}
