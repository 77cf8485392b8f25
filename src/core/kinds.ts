/**
 * The cost kinds, spelled as entries and every output spell them, and the layer in which each first counts.
 *
 * operating  = what growing this crop costs this season
 * cash       = operating + rent, land tax, overhead and term interest
 * full       = cash − term interest + machine ownership, land charge, unpaid labour, management; with the term interest
 *              where neither machine ownership nor a land charge is entered
 * cash need  = cash + term principal, family living, income tax
 *
 * The full layer charges interest on all capital through ownership and the land charge, so term interest leaves it.
 * Ownership and principal are never in one layer: that would charge the machine twice.
 */
export const operatingKinds = [
  "seed",
  "fertilizer",
  "crop protection",
  "fuel",
  "repairs",
  "custom work",
  "hired labour",
  "drying",
  "haul",
  "crop insurance",
  "supplies",
  "irrigation",
  "other operating",
  "operating interest",
] as const;
export const cashKinds = ["cash rent", "land tax", "overhead", "term interest"] as const;
export const fullKinds = ["machine ownership", "land charge", "unpaid labour", "management"] as const;
export const cashNeedKinds = ["term principal", "family living", "income tax"] as const;

export const kinds = [...operatingKinds, ...cashKinds, ...fullKinds, ...cashNeedKinds] as const;
export type OperatingKind = (typeof operatingKinds)[number];
export type Kind = (typeof kinds)[number];

export const layers = ["operating", "cash", "full", "cashNeed"] as const;
export type Layer = (typeof layers)[number];

/** How a layer is named to people. */
export const layerNames: Record<Layer, string> = { operating: "operating", cash: "cash", full: "full", cashNeed: "cash need" };

/** "cash cost", "full cost"; "cash need" is no cost alone and says so itself. */
export const layerCosts: Record<Layer, string> = {
  operating: "operating cost",
  cash: "cash cost",
  full: "full cost",
  cashNeed: "cash need",
};

const members: Record<Layer, ReadonlySet<Kind>> = {
  operating: new Set<Kind>(operatingKinds),
  cash: new Set<Kind>([...operatingKinds, ...cashKinds]),
  full: new Set<Kind>([...operatingKinds, ...cashKinds.filter((kind) => kind !== "term interest"), ...fullKinds]),
  cashNeed: new Set<Kind>([...operatingKinds, ...cashKinds, ...cashNeedKinds]),
};

/** Whether a cost of `kind` counts in `layer`. */
export const countsIn = (kind: Kind, layer: Layer): boolean => members[layer].has(kind);

/** The kinds that a layer adds, in the order in which they are shown. */
export const kindsIn = (layer: Layer): readonly Kind[] => kinds.filter((kind) => countsIn(kind, layer));

/** Kinds whose items are charged as they are used unless the item says otherwise; all others are charged as bought. */
export const chargedAsUsed: ReadonlySet<Kind> = new Set<Kind>(["seed", "fertilizer", "crop protection"]);
