/** The boxes of a layout's form, declared once: what they are called, and what type their values have. */
import type { Decimal } from "../../core/numbers/decimal";
import type { TankItem } from "../../core/partialBudget/layouts/spraying";
import type { Wanted } from "../parts/typed";
import type { Ground } from "./ground";

/** One box. `{…}` in a label stands for a unit: {area}, {yield}, {unit} (of the crop), {money}, {length}. */
export type Box = {
  readonly name: string;
  readonly label: string;
  readonly wanted?: Wanted;
  readonly hint?: string;
  readonly begin?: (ground: Ground) => Decimal | null;
};

/** A box without its name, which is its key. `IsNeeded`: whether a sound form has a number in it. */
export type DeclaredBox<IsNeeded extends boolean = boolean> = Omit<Box, "name"> & { readonly isNeeded: IsNeeded };
/** The boxes of a form by name; three names are every form's own. */
export type DeclaredBoxes = Readonly<Record<string, DeclaredBox>> & {
  readonly name?: never;
  readonly acres?: never;
  readonly rate?: never;
};

/** What is typed, as far as it is sound. */
export type SoFar<Boxes extends DeclaredBoxes> = { readonly [Name in keyof Boxes]: Decimal | null };
/** The values of a form without faults: a number in every box that needs one. */
export type Sound<Boxes extends DeclaredBoxes> = {
  readonly [Name in keyof Boxes]: Boxes[Name] extends DeclaredBox<true> ? Decimal : Decimal | null;
};

/** What is typed in the boxes: numbers already read, and what goes into the tank. */
export type Values = { readonly numbers: Readonly<Record<string, Decimal | null>>; readonly products: readonly TankItem[] };

type More = Omit<Box, "name" | "label">;

/** A box in which a number is needed. */
export const must = (label: string, { wanted = {}, ...more }: More = {}): DeclaredBox<true> => ({
  label,
  isNeeded: true,
  wanted: { ...wanted, needed: true },
  ...more,
});
/** A box that may stay blank. */
export const may = (label: string, more: More = {}): DeclaredBox<false> => ({ label, isNeeded: false, ...more });
