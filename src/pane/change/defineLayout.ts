/** A layout of a change, declared once: its boxes and what they make; the type of the values follows from the boxes. */
import type { Circumstances, Layout, LayoutName } from "../../core/partialBudget/layouts/layout";
import type { TankItem } from "../../core/partialBudget/layouts/spraying";
import type { Format } from "../format";
import type { Faults } from "../parts/typed";
import type { Box, DeclaredBoxes, SoFar, Sound, Values } from "./box";
import type { Ground } from "./ground";

type About = {
  /** The name that saved changes keep. */
  readonly name: Exclude<LayoutName, "Reseed">;
  /** Whether products go into it, a row each. */
  readonly hasProducts?: boolean;
  /** Whether the grain of the layout is without drying. */
  readonly beforeDrying?: boolean;
};

type DeclaredLayout<Boxes extends DeclaredBoxes> = About & {
  readonly boxes: Boxes;
  /** What is wrong between boxes that are sound each for itself. */
  readonly check?: (values: SoFar<Boxes>) => Faults<keyof Boxes & string>;
  /** What the boxes say by themselves, whatever the answer. */
  readonly says?: (values: SoFar<Boxes>, format: Format, ground: Ground) => readonly string[];
  /** Called with sound values only. */
  readonly build: (of: Circumstances, values: Sound<Boxes>, ground: Ground, products: readonly TankItem[]) => Layout;
};

/** A layout as the form has it, whatever its boxes are. */
export type LayoutForm = About & {
  readonly boxes: readonly Box[];
  readonly check: (values: Values) => Faults<string>;
  /** Left out where the boxes say nothing by themselves. */
  readonly says?: (values: Values, format: Format, ground: Ground) => readonly string[];
  readonly build: (of: Circumstances, values: Values, ground: Ground) => Layout;
};

export function defineLayout<const Boxes extends DeclaredBoxes>(layout: DeclaredLayout<Boxes>): LayoutForm {
  const { boxes, check, says, build, ...about } = layout;
  // The form reads a number or a blank for each of these boxes, and builds from sound ones only.
  const soFar = ({ numbers }: Values) => numbers as SoFar<Boxes>;
  return {
    ...about,
    boxes: Object.entries(boxes).map(([name, { isNeeded: _isNeeded, ...box }]): Box => ({ name, ...box })),
    check: (values) => check?.(soFar(values)) ?? {},
    ...(says === undefined ? {} : { says: (values, format, ground) => says(soFar(values), format, ground) }),
    build: (of, values, ground) => build(of, values.numbers as Sound<Boxes>, ground, values.products),
  };
}
