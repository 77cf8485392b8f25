/** Calendar days: what lies between two, and the days beside one. */
import { Decimal } from "./decimal";
import type { IsoDate } from "../row";

const millisecondsInDay = 86_400_000;
const moved = (date: IsoDate, days: 1 | -1): IsoDate => new Date(Date.parse(date) + days * millisecondsInDay).toISOString().slice(0, 10);

export const nextDay = (date: IsoDate): IsoDate => moved(date, 1);
export const dayBefore = (date: IsoDate): IsoDate => moved(date, -1);

/** Days from one date to another; below zero where it lies before. */
export const daysBetween = (from: IsoDate, to: IsoDate): Decimal =>
  new Decimal(String((Date.parse(to) - Date.parse(from)) / millisecondsInDay));
