/** Calendar days: what lies between two, and the days beside one. */
import { Decimal } from "./decimal";
import type { IsoDate } from "../row";

const millisecondsInDay = 86_400_000;
/** So many whole days later, or before where they are below zero. */
// eslint-disable-next-line no-restricted-syntax -- days are counted, not measured
export const daysAfter = (date: IsoDate, days: number): IsoDate =>
  new Date(Date.parse(date) + days * millisecondsInDay).toISOString().slice(0, 10);

export const nextDay = (date: IsoDate): IsoDate => daysAfter(date, 1);
export const dayBefore = (date: IsoDate): IsoDate => daysAfter(date, -1);

/** Days from one date to another; below zero where it lies before. */
export const daysBetween = (from: IsoDate, to: IsoDate): Decimal =>
  new Decimal(String((Date.parse(to) - Date.parse(from)) / millisecondsInDay));
