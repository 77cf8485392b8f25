// @vitest-environment jsdom
import { describe, expect, it } from "vitest";
import { cautionsOf, planningCaution } from "../../core/cautions";
import { kinds, kindsIn, layerCosts, layers, type Layer } from "../../core/kinds";
import { measureNames } from "../../core/numbers/measure";
import { settingNames } from "../../workbook/columns/season";
import { spelled } from "../../workbook/spelling";
import { inputTables } from "../../workbook/templates";
import { layersPart } from "./figureParts";
import { helpHtml } from "./helpHtml";
import { helpParts } from "./helpParts";
import { putInto, saidIn, type HelpPart } from "./part";
import { tablesPart } from "./tableParts";

const all = helpParts.map(saidIn).join("\n");
const withInner = (parts: readonly HelpPart[]): readonly HelpPart[] => parts.flatMap((part) => [part, ...withInner(part.parts ?? [])]);
const termsOf = ({ blocks }: HelpPart) => new Map(blocks.flatMap((block) => (block.is === "terms" ? block.terms : [])));

describe("the help", () => {
  it("names every table with each of its columns and what stands there", () => {
    for (const { sheet, columns } of inputTables) {
      const part = tablesPart.parts!.find(({ title }) => title === sheet)!;
      const said = termsOf(part);
      for (const { heading, hint } of columns) expect(said.get(heading), `${sheet}, ${heading}`).toContain(hint);
      expect(saidIn(part)).not.toContain("undefined");
    }
    expect(tablesPart.parts).toHaveLength(inputTables.length);
  });

  it("says of every setting what it does", () => {
    const said = termsOf(tablesPart.parts!.find(({ title }) => title === "Season")!);
    for (const setting of settingNames) expect(said.get(setting)!.length, setting).toBeGreaterThan(10);
  });

  it("names every layer, and of each the kinds that it adds to the one before", () => {
    const said = termsOf(layersPart);
    const title = (layer: Layer) => `${layerCosts[layer].charAt(0).toUpperCase()}${layerCosts[layer].slice(1)}`;
    for (const layer of layers) expect(said.has(title(layer)), layer).toBe(true);
    for (const kind of kinds) {
      const first = (["operating", "cash", "full", "cashNeed"] as const).find((layer) => kindsIn(layer).includes(kind))!;
      expect(said.get(title(first)), `${kind} in ${first}`).toContain(kind);
    }
  });

  it("names every unit of items, the three stages, and each caution word for word", () => {
    for (const unit of measureNames) expect(all).toContain(unit);
    for (const stage of ["Plan", "Projected", "Final"])
      expect(
        helpParts.some((part) => termsOf(part).has(stage)),
        stage,
      ).toBe(true);
    for (const words of [planningCaution, ...Object.values(cautionsOf).flat()]) expect(all).toContain(words);
  });

  it("calls the stage between plan and final projected in every word of its own", () => {
    const own = helpParts
      .filter((part) => part !== tablesPart)
      .map(saidIn)
      .join("\n");
    expect(own).not.toMatch(/\boutlook\b/i);
  });

  it("can be put into the words of a season, down to each column, and nothing else of it changes", () => {
    const put = helpParts.map((part) => putInto(part, (words) => words.toUpperCase()));
    expect(put.map(saidIn).join("\n")).toBe(all.toUpperCase());
    expect(withInner(put).map(({ id }) => id)).toEqual(withInner(helpParts).map(({ id }) => id));
  });

  it("gives each part a name of its own for links", () => {
    const ids = withInner(helpParts).map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z][a-z-]*$/);
  });
});

describe("help.html", () => {
  const page = new DOMParser().parseFromString(helpHtml, "text/html");
  const plainText = (text: string) => text.replace(/\s+/g, " ");

  it("says all that the pane's help says", () => {
    const shown = plainText(page.body.textContent);
    for (const line of all.split("\n")) expect(shown).toContain(plainText(spelled(line, "USD")));
  });

  it("links only to what is there, to the desk, to the install page and to the notices that the build makes", () => {
    for (const link of page.querySelectorAll("a")) {
      const to = link.getAttribute("href")!;
      if (!["index.html", "install.html", "third-party-notices.txt"].includes(to)) expect(page.querySelector(to), to).not.toBeNull();
    }
    expect(page.querySelectorAll("script")).toHaveLength(0);
  });
});
