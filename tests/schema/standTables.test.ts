/** The published stand tables as they are written down: what shape the data has, judged before our reader sees it. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as z from "zod";
import { standUnits } from "../../src/core/stand/standUnit";

const folder = "shared/published";
const words = z.string().trim().min(1);
const monthDay = z.string().regex(/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/);
const digits = z.string().regex(/^\d+(\.\d+)?$/);

/** Points, and windows from one value to a later one, each beginning no sooner than the one before it ends. */
const axis = (value: z.ZodString, beyond: (later: string, earlier: string) => boolean) =>
  z
    .array(z.union([value, z.strictObject({ from: value, to: value }).refine(({ from, to }) => beyond(to, from), "a window runs forward")]))
    .min(1)
    .nullable()
    .refine((entries) => {
      const ends = (entries ?? []).map((each) => (typeof each === "string" ? { from: each, to: each } : each));
      return ends.every(({ from }, index) => index === 0 || from === ends[index - 1]!.to || beyond(from, ends[index - 1]!.to));
    }, "an axis ascends");

const table = z
  .strictObject({
    name: words,
    crop: z.enum(["corn", "soybeans", "wheat"]),
    region: words,
    source: z.strictObject({
      title: words,
      publisher: words,
      year: z.union([z.string().regex(/^\d{4}$/), z.literal("year not printed")]),
      address: z.url(),
      where: words,
    }),
    limits: z.array(words.endsWith(".")).min(1),
    remark: words.endsWith(".").optional(),
    standUnit: z.enum(standUnits),
    dates: axis(monthDay, (later, earlier) => later > earlier),
    stands: axis(digits, (later, earlier) => Number(later) > Number(earlier)),
    percent: z.array(z.array(digits.refine((percent) => Number(percent) <= 100, "percent of the best").nullable())),
  })
  .refine(({ dates, stands }) => dates !== null || stands !== null, "a table has an axis")
  .refine(
    ({ dates, stands, percent }) => percent.length === (dates?.length ?? 1) && percent.every((row) => row.length === (stands?.length ?? 1)),
    "a cell for each date and stand",
  );

const file = z.strictObject({
  about: words,
  usual: z.array(words),
  tables: z.array(table),
  shifted: z.strictObject({
    why: words.endsWith("."),
    source: z.strictObject({ publisher: words, year: words, address: z.url() }),
    tables: z.array(
      z.strictObject({ name: words, shiftOf: words, days: z.string().regex(/^[1-9]\d?$/), region: words, limit: words.endsWith(".") }),
    ),
  }),
});

const text = readFileSync(`${folder}/stand-tables.json`, "utf8");
const written = file.parse(JSON.parse(text));
/** The same file with something changed in its text, which must have been there. */
const changed = (from: string, to: string) => {
  expect(text).toContain(from);
  return file.safeParse(JSON.parse(text.replace(from, to)));
};

describe("the stand tables in shared/published", () => {
  it("are the only data there, twelve as printed and three moved to a later season", () => {
    expect(readdirSync(folder)).toEqual(["stand-tables.json"]);
    expect([written.tables.length, written.shifted.tables.length]).toEqual([12, 3]);
  });

  it("have names of their own, and what refers to one names it", () => {
    const names = written.tables.map(({ name }) => name);
    expect(new Set([...names, ...written.shifted.tables.map(({ name }) => name)]).size).toBe(15);
    expect(names).toEqual(expect.arrayContaining([...written.usual, ...written.shifted.tables.map(({ shiftOf }) => shiftOf)]));
  });

  it("stand for a crop once at most where the grower names none", () => {
    const crops = written.usual.map((usual) => written.tables.find(({ name }) => name === usual)?.crop);
    expect(crops).toEqual(["corn"]);
  });

  it.each(written.shifted.tables)("say in words what they count in: $name", ({ name, days, limit, region }) => {
    expect(name).toContain(`${days} days later`);
    expect(limit).toContain(`moved ${days} days`);
    expect(limit).toContain(region.replace("Ontario, ", ""));
  });

  it.each([
    ["a cell is left out", `["62", "68", `, `["68", `],
    ["a digit is a letter", `"62", "68"`, `"6l", "68"`],
    ["a percentage is a number", `"62", "68"`, `62, "68"`],
    ["dates run backward", `"04-10", "04-15"`, `"04-15", "04-10"`],
    ["stands run backward", `"10000", "12000"`, `"12000", "10000"`],
    ["a window is upside down", `"from": "04-20", "to": "05-05"`, `"from": "05-05", "to": "04-20"`],
    ["a unit is unknown", `"plants per metre of row"`, `"plants per yard"`],
    ["a limit is missing", `"It says nothing of the stand."`, `""`],
    ["a word is misspelt", `"region"`, `"regoin"`],
  ])("would be turned away where %s", (_what, from, to) => expect(changed(from, to).success).toBe(false));
});
