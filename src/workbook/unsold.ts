/** How the price is named that what is not sold yet must bring: bushels are called so, other units are not named. */
export const priceNeededOnUnsold = (units: readonly string[]): string =>
  `Price needed on unsold ${units.every((unit) => unit === "bu") ? "bushels" : "grain"}`;
