/** Whether Excel works a cell out; text that begins like a formula is given as both the same. */
export const isFormula = (formula: unknown, value: unknown): boolean =>
  typeof formula === "string" && formula.startsWith("=") && formula !== value;
