import { describe, expect, it } from "vitest";
import { application, field, item, operation, seasonOf } from "../../tests/support/season";
import type { Season } from "../core/season";
import { doneTwice } from "./doneTwice";

const rowsIn = (parts: Partial<Season>) =>
  doneTwice(seasonOf({ fields: [field("Home", "100", "200"), field("Hill", "50", "200", { crop: "Soybeans" })], ...parts })).map(
    ({ found, touches }) => `${found} ${touches.map((subject) => ("name" in subject ? subject.name : subject.of)).join(", ")}`,
  );
const day = { date: "2031-06-01" };

describe("a planned row marked done as planned", () => {
  const marked = application("Urea", "Home", "60", "done as planned", day);
  const items = [item("Urea", "1")];

  it("is told where a done row of the same item, day and field stands beside it, at whatever rate", () => {
    expect(rowsIn({ items, applications: [marked, application("Urea", "Home", "58.5", "done", day)] })).toEqual(["Urea Home"]);
    expect(
      rowsIn({ items, applications: [{ ...marked, target: { crop: "Corn" } }, application("Urea", "Home", "60", "done", day)] }),
    ).toEqual(["Urea Home"]);
    expect(rowsIn({ items, applications: [{ ...marked, date: null }, application("Urea", "Home", "60", "done")] })).toEqual(["Urea Home"]);
    expect(
      rowsIn({
        operations: [
          operation("Spraying", "Home", "9", "done as planned"),
          operation("spraying", "", "9", "done", { target: { crop: "Corn" } }),
        ],
      }),
    ).toEqual(["spraying Corn"]);
  });

  it("is not told beside another day, field, item or a row that is still planned", () => {
    const others = [
      application("Urea", "Home", "60", "done", { date: "2031-06-20" }),
      application("Urea", "Hill", "60", "done", day),
      application("Potash", "Home", "60", "done", day),
      application("Urea", "Home", "60", "plan", day),
      application("Urea", "Home", "60", "done as planned", day),
    ];
    expect(rowsIn({ items, applications: [marked, ...others] })).toEqual([]);
    expect(
      rowsIn({ items, applications: [marked, application("Urea", "", "60", "done", { ...day, target: { crop: "Soybeans" } })] }),
    ).toEqual([]);
  });
});
