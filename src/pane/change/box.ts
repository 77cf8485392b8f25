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

/** What is typed in the boxes: numbers already read, and what goes into the tank. */
export type Values = { readonly number: (name: string) => Decimal | null; readonly products: readonly TankItem[] };
