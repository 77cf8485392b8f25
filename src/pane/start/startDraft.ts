/** What is typed at Start, and the rows that it becomes: a rough budget of one field a crop, with its land and loans. */
import { Decimal, hundred } from "../../core/numbers/decimal";
import type { Kind } from "../../core/kinds";
import { budgetColumns } from "../../workbook/columns/budget";
import { cropColumns } from "../../workbook/columns/crops";
import { fieldColumns } from "../../workbook/columns/fields";
import { loanColumns, paymentsAYear } from "../../workbook/columns/loans";
import { seasonColumns } from "../../workbook/columns/season";
import { readDate } from "../../workbook/dates";
import { plain } from "../../workbook/words";
import { entryRow, type Entry, type EntryRow } from "../commands/entryRow";
import { Typed } from "../parts/typed";

const { columns: field } = fieldColumns;
const { columns: loan } = loanColumns;

/** Every box as typed, by its name: `crop 0 name`, `need 0 seed`, `whole overhead`, `land 0 rent`, `loan 0 balance`. */
export type StartDraft = Readonly<Record<string, string>>;

/** Kinds that are budgeted by the acre and crop, in the order of the year. */
export const acreKinds = [
  "seed",
  "fertilizer",
  "crop protection",
  "custom work",
  "fuel",
  "repairs",
  "hired labour",
  "irrigation",
  "supplies",
  "crop insurance",
  "drying",
  "haul",
  "other operating",
  "machine ownership",
  "unpaid labour",
  "management",
] as const satisfies readonly Kind[];
/** Kinds that a farm has as a whole. */
export const farmKinds = ["land tax", "overhead", "family living", "income tax"] as const satisfies readonly Kind[];

type StartTable = "Season" | "Crops" | "Fields" | "Budget" | "Loans";
export type StartEntries = readonly { readonly table: StartTable; readonly rows: readonly EntryRow[] }[];

export type StartView = {
  /** What is wrong, by the name of the box. */
  readonly faults: { readonly [box: string]: string | undefined };
  /** The names of the crops, in the order of their lines. */
  readonly crops: readonly { readonly line: number; readonly name: string }[];
  /** Rows of every table that is to have any; none of what is half typed or wrong. */
  readonly entries: StartEntries;
  /** How many kinds of cost have no amount for any crop. */
  readonly blankKinds: number;
  readonly hasLand: boolean;
  readonly hasLoans: boolean;
};

/** What the workbook has already. */
export type StartBasis = {
  readonly crops: readonly string[];
  readonly fields: readonly string[];
  readonly loans: readonly string[];
  readonly seasonYear: string | null;
  readonly decimalComma: boolean;
  readonly currency: string;
};

/** How many lines of a sort the form shows: those that are begun, and a blank one. */
export const linesShown = (draft: StartDraft, sort: "crop" | "loan"): number =>
  1 +
  Math.max(
    -1,
    ...Object.entries(draft)
      .filter(([name, typed]) => name.startsWith(`${sort} `) && typed.trim() !== "")
      .map(([name]) => Number(name.split(" ")[1])),
  );

const fieldOf = (crop: string): string => `All ${crop.toLowerCase()}`;
const cropBoxes = ["name", "acres", "goal", "price"] as const;
const loanBoxes = ["name", "balance", "rate", "payment", "often", "due"] as const;

export function startView(draft: StartDraft, basis: StartBasis): StartView {
  const typed = new Typed<string>(draft, basis.decimalComma, basis.currency);
  const { faults } = typed;
  const text = (name: string): string => (draft[name] ?? "").trim();
  const isBegun = (sort: string, line: number, boxes: readonly string[]) => boxes.some((box) => text(`${sort} ${line} ${box}`) !== "");
  const lines = (sort: "crop" | "loan", boxes: readonly string[]) =>
    Array.from({ length: linesShown(draft, sort) }, (_, line) => line).filter((line) => isBegun(sort, line, boxes));
  const percent = (name: string, example: string): Decimal | null => {
    const value = typed.number(name, { isPercent: true });
    if (value === null || value.isZero()) return value;
    if (value.lt("0.4") || value.gt(hundred)) faults[name] = `Enter percent, such as ${example}.`;
    return faults[name] === undefined ? value.div(hundred) : null;
  };
  const year = basis.seasonYear ?? text("year");
  if (!/^\d{4}$/.test(year)) faults["year"] = "Enter the year of the harvest, such as 2026.";

  const seen = new Set(basis.crops.map(plain));
  const crops = lines("crop", cropBoxes).map((line) => {
    const name = text(`crop ${line} name`);
    if (name === "") faults[`crop ${line} name`] = "Name the crop.";
    else if (seen.has(plain(name)) || basis.fields.some((field) => plain(field) === plain(fieldOf(name))))
      faults[`crop ${line} name`] = `${name} is there already.`;
    seen.add(plain(name));
    const [acres, goal, price] = [
      typed.number(`crop ${line} acres`, { needed: true, aboveZero: true }),
      typed.number(`crop ${line} goal`, { needed: true, aboveZero: true }),
      typed.number(`crop ${line} price`, { needed: true, aboveZero: true }),
    ];
    return { line, name, acres, goal, price, unit: text(`crop ${line} unit`) || "bu" };
  });
  const sound = crops.filter(
    ({ line, acres, goal, price }) => faults[`crop ${line} name`] === undefined && acres !== null && goal !== null && price !== null,
  );
  const land = sound.map(({ line, name, acres, goal }) => {
    const [rent, charge, share] = [
      typed.number(`land ${line} rent`),
      typed.number(`land ${line} charge`),
      percent(`land ${line} share`, "50"),
    ];
    if (rent !== null && share !== null) faults[`land ${line} share`] = "Rent or a share of the crop, not both.";
    const tenure = share !== null ? "crop share" : rent !== null ? "cash rent" : charge !== null ? "owned" : "";
    return {
      filled: rent !== null || charge !== null || share !== null,
      row: entryRow([
        [field.field, fieldOf(name)],
        [field.crop, name],
        [field.acres, acres],
        [field.yieldGoal, goal],
        [field.tenure, tenure],
        [field.rent, rent],
        [field.landCharge, charge],
        [field.operatorShare, share],
      ]),
    };
  });
  const { over, kind, amount, basis: counted } = budgetColumns.columns;
  const blank = new Set<Kind>([...acreKinds, ...farmKinds]);
  const budgetOf = (name: string, of: Kind, more: readonly (readonly [{ heading: string }, Entry])[]): readonly EntryRow[] => {
    const value = typed.number(name);
    if (value === null) return [];
    blank.delete(of);
    return [entryRow([[kind, of], [amount, value], ...more])];
  };
  const budget = [
    ...acreKinds.flatMap((of) =>
      sound.flatMap(({ line, name }) =>
        budgetOf(`need ${line} ${of}`, of, [
          [over, name],
          [counted, "per acre"],
        ]),
      ),
    ),
    ...farmKinds.flatMap((of) =>
      budgetOf(`whole ${of}`, of, [
        [over, "all"],
        [counted, "whole"],
      ]),
    ),
  ];
  const loans = lines("loan", loanBoxes).flatMap((line): readonly EntryRow[] => {
    const at = (box: string) => `loan ${line} ${box}`;
    const [name, isTerm] = [text(at("name")), text(at("kind")) !== "operating"];
    if (name === "") faults[at("name")] = "Name the loan.";
    else if (basis.loans.some((each) => plain(each) === plain(name))) faults[at("name")] = `${name} is there already.`;
    const [balance, rate] = [
      typed.number(at("balance"), { needed: true }),
      text(at("rate")) === "" ? typed.number(at("rate"), { needed: true }) : percent(at("rate"), "7.5"),
    ];
    const [payment, often] = [typed.number(at("payment"), { needed: isTerm }), typed.number(at("often"))];
    if (often !== null && paymentsAYear.every((each) => !often.eq(each)))
      faults[at("often")] = `Enter ${paymentsAYear.slice(0, -1).join(", ")} or ${paymentsAYear.at(-1)!}.`;
    const due =
      text(at("due")) === "" ? null : readDate(text(at("due")), { seasonYear: year, dayFirst: basis.decimalComma, dateSystem: "1900" });
    if (text(at("due")) === "" ? isTerm : due === null) faults[at("due")] = "Enter the date of the next payment, such as 2026-12-01.";
    if (balance === null || rate === null || loanBoxes.some((box) => faults[at(box)] !== undefined)) return [];
    return [
      entryRow([
        [loan.name, name],
        [loan.kind, isTerm ? "term" : "operating"],
        [loan.balance, balance],
        [loan.rate, rate],
        [loan.payment, payment],
        [loan.paymentsAYear, isTerm ? (often ?? new Decimal("1")) : null],
        [loan.nextDue, due === null ? null : { day: due }],
      ]),
    ];
  });
  const columns = cropColumns.columns;
  const { setting, value } = seasonColumns.columns;
  const tables: StartEntries = [
    {
      table: "Season",
      rows:
        basis.seasonYear === null && faults["year"] === undefined
          ? [
              entryRow([
                [setting, "Season year"],
                [value, new Decimal(year)],
              ]),
            ]
          : [],
    },
    {
      table: "Crops",
      rows: sound.map(({ name, unit, price }) =>
        entryRow([
          [columns.crop, name],
          [columns.yieldUnit, unit],
          [columns.price, price],
        ]),
      ),
    },
    { table: "Fields", rows: land.map((each) => each.row) },
    { table: "Budget", rows: budget },
    { table: "Loans", rows: loans },
  ];
  if (crops.length === 0) faults["crop 0 name"] = "Name the first crop.";
  return {
    faults,
    crops: crops.map(({ line, name }) => ({ line, name: name === "" ? `Crop ${line + 1}` : name })),
    entries: tables.filter(({ rows }) => rows.length > 0),
    blankKinds: blank.size,
    hasLand: land.some(({ filled }) => filled),
    hasLoans: loans.length > 0,
  };
}
