/** What must be said beside costs whose work can hurt: ammonia, dryer, bin and long hours, known by what entries are called. */
import { cautionsOf, works, worksNamed, type CautionedWork } from "../core/cautions";
import type { Kind } from "../core/kinds";
import type { Season } from "../core/season";

const worksOfKind: { readonly [K in Kind]?: CautionedWork } = {
  drying: "dryer",
  "hired labour": "long hours",
  "unpaid labour": "long hours",
};

/** One line for each work that some cost of the season concerns. */
export function costCautions({ settings, items, operations, otherCosts, machines }: Season): readonly string[] {
  const costs: readonly { readonly kind: Kind; readonly name: string }[] = [
    ...items,
    ...operations.map(({ operation, kind }) => ({ name: operation, kind })),
    ...otherCosts.map(({ item, kind }) => ({ name: item, kind })),
  ];
  const kinds = new Set(costs.map(({ kind }) => kind));
  const named = [...new Set(costs.map(({ name }) => name))].flatMap(worksNamed);
  const concerned = new Set<CautionedWork>([
    ...named,
    ...[...kinds].flatMap((kind) => worksOfKind[kind] ?? []),
    ...(settings.dryingChargePerPoint === null ? [] : ["dryer" as const]),
    ...(machines.length === 0 ? [] : ["long hours" as const]),
  ]);
  return works.filter((work) => concerned.has(work)).flatMap((work) => cautionsOf[work]);
}
