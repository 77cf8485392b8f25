/** A new change that another page begins: the layout, where it happens, and what stands in its boxes already. */
import type { LayoutName } from "../../core/partialBudget/layouts/layout";
import type { ChangeDraft } from "./changeDraft";

export type ChangeStart = {
  readonly layout: LayoutName;
  /** As the choices of *Where* have it. */
  readonly target: string;
  readonly boxes: ChangeDraft;
};
