/** Coefficients of machine costs that were not checked against a printed table: figures that rest on them are marked. */
import type { Kind } from "../core/kinds";
import type { MachinePart } from "../core/machines/machine";
import type { Season } from "../core/season";
import { remainingValueFactors } from "../core/tables/remainingValue";
import { repairFactors } from "../core/tables/repairFactors";

type Unchecked = { readonly machine: string; readonly kind: Extract<Kind, "repairs" | "machine ownership">; readonly class: string };

const ofPart = ({ name, repairClass, salvage }: MachinePart): readonly Unchecked[] => [
  ...(repairClass !== null && repairFactors[repairClass].certainty === "from memory"
    ? [{ machine: name, kind: "repairs", class: repairClass } as const]
    : []),
  ...(salvage !== null && "by" in salvage && remainingValueFactors[salvage.by].certainty === "from memory"
    ? [{ machine: name, kind: "machine ownership", class: salvage.by } as const]
    : []),
];

/** Those of the machines that do work of this season, each once. */
function uncheckedCoefficients({ machines, operations }: Season): readonly Unchecked[] {
  const used = new Set(operations.flatMap(({ cost }) => (cost.basis === "machine" ? [cost.machine] : [])));
  const all = machines
    .filter(({ name }) => used.has(name))
    .flatMap(({ main, tractor }) => [main, ...(tractor === null ? [] : [tractor])].flatMap(ofPart));
  return [...new Map(all.map((each) => [`${each.machine}\n${each.kind}`, each])).values()];
}

/** Beside a figure that rests on one. */
const uncheckedMark = "*";

/** A kind as it is written beside its figures, with the mark where some of it rests on an unchecked coefficient. */
export function kindMarker(season: Season): (kind: Kind) => string {
  const kinds = new Set<Kind>(uncheckedCoefficients(season).map(({ kind }) => kind));
  return (kind) => (kinds.has(kind) ? `${kind} ${uncheckedMark}` : kind);
}

/** What the mark means, for the foot of a page; none where nothing is marked. */
export function uncheckedNotes(season: Season): readonly string[] {
  const all = uncheckedCoefficients(season);
  if (all.length === 0) return [];
  const told = all.map(({ machine, kind, class: of }) => `${machine} (${kind}, class ${of})`).join(", ");
  return [
    `${uncheckedMark} Rests on published coefficients that we have from memory and did not check against print: ${told}. Enter ` +
      "repairs or a salvage value of your own instead.",
  ];
}

/** The same in one line, by classes, where a page has no room for machines. */
export function uncheckedInShort(season: Season): readonly string[] {
  const classes = [...new Set(uncheckedCoefficients(season).map((each) => each.class))];
  return classes.length === 0
    ? []
    : [`${uncheckedMark} Some of it by coefficients not checked against print (classes ${classes.join(", ")}); see Cost per acre.`];
}
