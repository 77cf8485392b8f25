/** The label of a box that must be filled says "needed" behind its words; a screen reader has it from the box itself. */
export const neededLabel = (label: string, isNeeded: boolean) =>
  isNeeded ? { children: label, required: { children: "needed", className: "pn-needed" } } : label;
