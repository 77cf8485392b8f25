/** The farm's own fields by hybrid: what each yields and how wet it came in, which is no trial. */
import type { Decimal } from "../core/numbers/decimal";
import type { IsoDate } from "../core/row";
import type { SeasonReport } from "./seasonReport";

export type OwnField = {
  readonly field: string;
  readonly hybrid: string;
  readonly planted: IsoDate | null;
  readonly stand: Decimal | null;
  readonly yield: Decimal;
  readonly isHarvested: boolean;
  /** Of the loads so far; `null` before the first. */
  readonly moisture: Decimal | null;
};

/** Fields of a crop that name a hybrid, by hybrid and then in the order of the table. */
export function ownFields({ season, figures }: SeasonReport, crop: string): readonly OwnField[] {
  const stands = new Map(figures.stands.map(({ field, summary }) => [field.name, summary.mean]));
  const fields = new Map(season.fields.map((field) => [field.name, field]));
  return (figures.crops.find((each) => each.crop === crop)?.fields ?? [])
    .flatMap(({ field: name, outlook, final, weighed }): readonly OwnField[] => {
      const { variety, planted } = fields.get(name)!;
      if (variety === null) return [];
      return [
        {
          field: name,
          hybrid: variety,
          planted,
          stand: stands.get(name) ?? null,
          yield: (final ?? outlook).budget.yields.used,
          isHarvested: final !== null,
          moisture: weighed?.moisture ?? null,
        },
      ];
    })
    .sort((a, b) => a.hybrid.localeCompare(b.hybrid));
}
