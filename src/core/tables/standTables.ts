/** All published tables of yield by date and stand, and which stands for a crop unless the grower chooses. */
import { Decimal } from "../decimal";
import { shiftedTable, type StandTable } from "../stand/standTable";
import { centralCornBelt, iowa2001, iowa2010, nebraska2009, northernMissouri, wisconsinFullSeason, wisconsinShortSeason } from "./cornStandTables";
import { soybeanDates, soybeanNarrowRows, soybeanWideRows, wheatOntario, wheatPennsylvania } from "./otherStandTables";

/**
 * No full table for Ontario could be read. Ontario reports the last planting date that keeps 95 % of the yield
 * (RealAgriculture, reporting OMAFRA and the University of Guelph, year not printed,
 * https://www.realagriculture.com/corn-school/corn-school-wet-fields-still-hold-high-yield-potential/); in the central
 * Corn Belt table that is 15 May. The shift is ours.
 */
const ontario = (place: string, keeps95Until: string, daysLater: string): StandTable =>
  shiftedTable(centralCornBelt, new Decimal(daysLater), {
    name: `Corn, Ontario, ${place} (central Corn Belt ${daysLater} days later)`, region: `Ontario, ${place}`,
    limit: `Not a published table: the central Corn Belt table moved ${daysLater} days, because Ontario reports 95 % of the yield until ${keeps95Until} at ${place}.`,
  });

export const standTables: readonly StandTable[] = [
  centralCornBelt, iowa2010, iowa2001, nebraska2009, wisconsinFullSeason, wisconsinShortSeason, northernMissouri,
  ontario("Elora", "20 May", "5"), ontario("Exeter", "25 May", "10"), ontario("Ridgetown", "30 May", "15"),
  soybeanDates, soybeanNarrowRows, soybeanWideRows, wheatOntario, wheatPennsylvania,
];

/** The table of that name, case and outer spaces aside; `null` where there is none. */
export const standTableNamed = (name: string): StandTable | null =>
  standTables.find((table) => table.name.toLowerCase() === name.trim().toLowerCase()) ?? null;

/** The table for a crop where the grower names none: the central Corn Belt's for corn; `null` for every other crop. */
export const usualStandTable = (crop: string): StandTable | null => (/\b(corn|maize)\b/i.test(crop) ? centralCornBelt : null);
