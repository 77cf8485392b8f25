import { describe, expect, it } from "vitest";
import { reseed, reseedCost, type ReseedCosts, type ReseedQuestion } from "../../src/core/reseed";
import { replantPayment } from "../../src/core/reseedInsurance";
import { area, moneyPerArea, moneyPerUnit, plantsPerArea, points, share, yieldPerArea } from "../../src/core/numbers/units";
import { centralCornBelt } from "../support/publishedStandTables";
import * as printed from "./changes";
import { check, checksPage } from "./checks";
import { sources } from "./sources";

const ours = sources["Purdue 2012, money ours"];

const noCosts: ReseedCosts = { endOldStand: null, seed: null, seedCredit: null, pass: null, treatment: null, herbicide: null, other: null };
const at = ([date, stand]: readonly [string, string]) => ({ date, stand: plantsPerArea(stand), rowWidth: null, areaUnit: "ac" as const });
const question = (
  of: {
    goal: string;
    planned: readonly [string, string];
    kept: readonly [string, string];
    reseeded: readonly [string, string];
    price: string;
    cost: string;
  },
  more: Partial<ReseedQuestion> = {},
): ReseedQuestion => ({
  table: centralCornBelt,
  area: area("40"),
  goal: yieldPerArea(of.goal),
  planned: at(of.planned),
  kept: at(of.kept),
  reseeded: at(of.reseeded),
  keptUniformityLoss: null,
  reseedAllowance: null,
  price: moneyPerUnit(of.price),
  moving: moneyPerUnit("0"),
  share: share("1"),
  dryingPerPoint: moneyPerUnit("0"),
  keptPoints: points("0"),
  reseededPoints: points("0"),
  costs: { ...noCosts, other: moneyPerArea(of.cost) },
  insurance: null,
  ...more,
});
const answerOf = (asked: ReseedQuestion) => {
  const result = reseed(asked);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

describe("keep or reseed", () => {
  it("keeps 18,000 plants of 25 April against 32,000 of 15 May", () => {
    const { marginal } = printed;
    const answer = answerOf(
      question(marginal, { dryingPerPoint: moneyPerUnit(marginal.dryingPerPoint), reseededPoints: points(marginal.points) }),
    );
    check(answer.keptYield, marginal.keptYield, ours, reseed, "kept yield");
    check(answer.reseededYield, marginal.reseededYield, ours, reseed, "reseeded yield");
    check(answer.net, marginal.net, ours, reseed, "net");
    expect(answer.decision).toBe("keep");
  });

  it("reseeds 10,000 plants of 20 April by 10 May", () => {
    const { clear } = printed;
    const answer = answerOf(question(clear, { insurance: moneyPerArea(clear.insurance) }));
    check(answer.keptYield, clear.keptYield, ours, reseed, "kept yield");
    check(answer.reseededYield, clear.reseededYield, ours, reseed, "reseeded yield");
    check(answer.net, clear.net, ours, reseed, "net");
    check(answer.breakEvenPrice, clear.breakEvenPrice, ours, reseed, "break-even price");
    expect(answer.decision).toBe("reseed");
  });

  it("needs a gap of cost ÷ price, as Arkansas has it", () => {
    const { arkansas } = printed;
    const answer = answerOf(
      question({
        goal: arkansas.fullYield,
        planned: ["04-30", "30000"],
        kept: ["04-30", "24000"],
        reseeded: ["04-30", "30000"],
        price: arkansas.price,
        cost: arkansas.cost,
      }),
    );
    check(answer.reseededYield.minus(answer.gapNeeded!), arkansas.reducedYield, sources["Arkansas 2006"], reseed);
  });

  it("costs in Iowa the sum of its parts", () => {
    const { iowaCost } = printed;
    const { endOldStand, pass, seed, total } = iowaCost;
    const costs = { ...noCosts, endOldStand: moneyPerArea(endOldStand), pass: moneyPerArea(pass), seed: moneyPerArea(seed) };
    check(reseedCost(costs), total, sources["Iowa replant 2006"], reseedCost);
  });
});

describe("the insurance payment", () => {
  it.each(printed.replantPayments)("on $crop of $approved at $coverage, appraised at $appraisal, is $payment an acre", (row) => {
    const result = replantPayment({
      crop: row.crop,
      approvedYield: yieldPerArea(row.approved),
      coverage: share(row.coverage),
      appraisal: yieldPerArea(row.appraisal),
      price: moneyPerUnit(row.price),
    });
    check(result.guaranteedYield, row.guarantee, sources["Iowa ICM 1998"], replantPayment, "guaranteed yield");
    check(result.appraisalMustBeBelow, row.trigger, sources["Iowa ICM 1998"], replantPayment, "appraisal below");
    check(result.payment, row.payment, sources["Iowa ICM 1998"], replantPayment, "payment");
    expect(result.due).toBe(true);
  });

  it("is not due at 90 % of the guarantee", () => {
    const result = replantPayment({
      crop: "corn",
      approvedYield: yieldPerArea("160"),
      coverage: share("0.75"),
      appraisal: yieldPerArea("108"),
      price: moneyPerUnit("4"),
    });
    expect([result.due, result.payment.toString()]).toEqual([false, "0"]);
  });
});

checksPage("Replanting");
