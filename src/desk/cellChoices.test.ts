import { describe, expect, it } from "vitest";
import { meant, offered } from "./cellChoices";

const kinds = ["seed", "custom work", "crop protection", "crop insurance", "fuel"];

describe("offered", () => {
  it("is the whole list before anything is typed", () => expect(offered(kinds, " ")).toEqual(kinds));
  it("puts what begins so before what only holds it", () => expect(offered(["old seed", ...kinds], "SE")).toEqual(["seed", "old seed"]));
  it("is nothing for a word of none", () => expect(offered(kinds, "xyz")).toEqual([]));
});

describe("meant", () => {
  it("is the only one that begins so", () => expect(meant(kinds, "Fu")).toBe("fuel"));
  it("is none while several begin so", () => expect(meant(kinds, "crop")).toBeNull());
  it("is the one spelled in full although another begins with it", () => expect(meant(["Corn", "Corn on corn"], "corn")).toBe("Corn"));
  it("is the one that the others only add words to", () => {
    const statuses = ["plan", "done", "done as planned"];
    expect(["d", "DON", "done", "done a", "p"].map((typed) => meant(statuses, typed))).toEqual([
      "done",
      "done",
      "done",
      "done as planned",
      "plan",
    ]);
    expect(meant(["Corn", "Cornstalks"], "co")).toBeNull();
  });
  it("is none for nothing typed", () => expect(meant(["Corn"], "")).toBeNull());
});
