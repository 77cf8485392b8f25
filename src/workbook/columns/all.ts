/** The tables whose columns are declared, in the order of a season's work. */
import type { Declared } from "./column";
import { applicationColumns } from "./applications";
import { budgetColumns } from "./budget";
import { changeColumns } from "./changes";
import { cropColumns } from "./crops";
import { fieldColumns } from "./fields";
import { harvestColumns } from "./harvest";
import { hybridColumns, hybridTrialColumns } from "./hybrids";
import { insuranceColumns } from "./insurance";
import { itemColumns } from "./items";
import { loanColumns } from "./loans";
import { machineColumns } from "./machines";
import { matchColumns } from "./matches";
import { operationColumns } from "./operations";
import { otherCostColumns } from "./otherCosts";
import { pastSeasonColumns } from "./pastSeasons";
import { planterCheckColumns } from "./planterChecks";
import { purchaseColumns } from "./purchases";
import { saleColumns } from "./sales";
import { seasonColumns } from "./season";
import { standCountColumns } from "./standCounts";
import { weatherColumns } from "./weather";
import { weedColumns } from "./weeds";

export const declaredTables: readonly Declared[] = [
  seasonColumns,
  cropColumns,
  fieldColumns,
  budgetColumns,
  itemColumns,
  purchaseColumns,
  applicationColumns,
  operationColumns,
  machineColumns,
  otherCostColumns,
  loanColumns,
  insuranceColumns,
  standCountColumns,
  weatherColumns,
  hybridColumns,
  hybridTrialColumns,
  weedColumns,
  planterCheckColumns,
  saleColumns,
  harvestColumns,
  changeColumns,
  pastSeasonColumns,
  matchColumns,
];
