/** Our tables, as they are named to people. */
export const tableNames = [
  "Season", "Crops", "Fields", "Items", "Purchases", "Applications", "Operations", "Machines", "Other costs", "Loans", "Insurance",
  "Stand counts", "Sales", "Harvest", "Changes",
] as const;
export type TableName = (typeof tableNames)[number];

/** The table that keeps which range and heading stands for which of our tables and columns. */
export const matchesTable = "Matches";
