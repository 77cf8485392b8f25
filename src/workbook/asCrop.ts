import type { CropFigures, FieldFigures } from "../core/figures";

/** A field as if it were all there is of its crop, for the parts that speak of crops. */
export const asCrop = (crop: CropFigures, field: FieldFigures): CropFigures => ({
  ...crop,
  area: field.area,
  fields: [field],
  plan: field.plan.budget,
  outlook: field.outlook.budget,
  final: field.final?.budget ?? null,
});
