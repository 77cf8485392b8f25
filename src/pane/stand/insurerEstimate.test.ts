import { describe, expect, it } from "vitest";
import { formatOf } from "../format";
import { cropOfRule, estimateView } from "./insurerEstimate";

const format = formatOf({ currency: "USD", areaUnit: "ac" }, "en-US");

describe("the estimate of the insurance payment", () => {
  it("says the road to the payment, as the bulletin of 1998 works it", () => {
    // Iowa State University Extension, ICM 27 July 1998: 40 bu at 70 %, appraised at 21: 18.45 dollars.
    const view = estimateView({ approved: "40", coverage: "70%", appraisal: "21", price: "6.15" }, "soybeans", false, format);
    expect(view.payment!.toString()).toBe("18.45");
    expect(view.says).toEqual([
      "Guaranteed: 40.0 bu × 70% = 28.0 bu per acre. Due where the appraisal is under 90% of it, 25.2 bu.",
      "Paid: a fifth of the guarantee, at most 3 bu of soybeans: 3.0 bu at 6.15 = 18.45 USD per acre.",
    ]);
  });
  it("says where nothing is due, and is silent while a box is blank or wrong", () => {
    const none = estimateView({ approved: "160", coverage: "75", appraisal: "108", price: "4" }, "corn", false, format);
    expect([none.payment!.toString(), none.says[1]]).toEqual(["0", "Appraised at 108.0 bu: by this rule nothing is due."]);
    expect(estimateView({ approved: "160" }, "corn", false, format)).toEqual({ faults: {}, says: [], payment: null });
    expect(estimateView({ approved: "0", coverage: "120" }, "corn", false, format).faults).toEqual({
      approved: "Enter a number above zero.",
      coverage: "Enter a percentage up to 100.",
    });
  });
  it("is offered for corn and soybeans in bushels an acre only", () => {
    expect([cropOfRule("Corn", "bu", "ac"), cropOfRule("Soybeans, early", "bu", "ac")]).toEqual(["corn", "soybeans"]);
    expect([
      cropOfRule("Winter wheat", "bu", "ac"),
      cropOfRule("Corn", "t", "ha"),
      cropOfRule("Corn", "bu", "ha"),
      cropOfRule("Corn silage", "bu", "ac"),
    ]).toEqual([null, null, null, null]);
  });
});
