/** Plain data with Maps in it as JSON text, to carry it into a page and out. */
export const toJson = (value: unknown): string =>
  JSON.stringify(value, (_key, each: unknown) => (each instanceof Map ? { entriesOfMap: [...each] } : each)) ?? "null";

export const fromJson = (text: string): unknown =>
  JSON.parse(text, (_key, each: { entriesOfMap?: [unknown, unknown][] } | null) =>
    each !== null && typeof each === "object" && each.entriesOfMap ? new Map(each.entriesOfMap) : each,
  );
