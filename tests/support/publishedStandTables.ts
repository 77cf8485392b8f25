/** The published tables of yield by date and stand, each under a name for tests. */
import type { StandTable } from "../../src/core/stand/standTable";
import { publishedStandTable } from "../../src/workbook/publishedStandTables";

function named(name: string): StandTable {
  const table = publishedStandTable(name);
  if (table === null) throw new RangeError(`there is no published table ${name}`);
  return table;
}

export const centralCornBelt = named("Corn, central Corn Belt (Purdue 2012)");
export const iowa2010 = named("Corn, Iowa (Iowa State 2010, part)");
export const iowa2001 = named("Corn, Iowa (Iowa State PM 1885, 2001)");
export const nebraska2009 = named("Corn, Nebraska (reprint of Iowa State 2001)");
export const wisconsinFullSeason = named("Corn, southern Wisconsin, full-season hybrid (2003, part)");
export const wisconsinShortSeason = named("Corn, southern Wisconsin, short-season hybrid (2003, part)");
export const northernMissouri = named("Corn, northern Missouri, by date only (2013)");
export const soybeanDates = named("Soybeans, Pennsylvania, by date only (2012)");
export const soybeanNarrowRows = named("Soybeans, Ohio, rows of 7.5 to 15 in, by stand only");
export const soybeanWideRows = named("Soybeans, Ohio, rows of 30 in, by stand only");
export const wheatOntario = named("Winter wheat, Ontario, by stand only (2012)");
export const wheatPennsylvania = named("Winter wheat, Pennsylvania, by stand only");
