/**
 * Days as cells hold them: numbers counted from the first day of one of two date systems. Excel's usual one counts from 1900-01-01
 * as 1 and believes in a 29 February 1900, so that its serials are right from 1 March 1900 on (earlier days are of no season); the
 * other counts from 1904-01-01 as 0.
 */
import type { IsoDate } from "../core/row";
import type { DateSystem } from "./cell";

const millisecondsInDay = 86_400_000;
/** The moment that a serial number of zero stands for. */
const zeroOf: Readonly<Record<DateSystem, number>> = { "1900": Date.UTC(1899, 11, 30), "1904": Date.UTC(1904, 0, 1) };

/** How much higher the serial of a day is in the 1900 system. */
export const daysBetweenSystems = (zeroOf["1904"] - zeroOf["1900"]) / millisecondsInDay;

/** The moment of a serial number at the beginning of its day. */
export const momentOfSerial = (serial: number, system: DateSystem): Date =>
  new Date(zeroOf[system] + Math.floor(serial) * millisecondsInDay);

/** The serial number of a moment, with the part of the day. */
export const serialOfMoment = (milliseconds: number, system: DateSystem): number => (milliseconds - zeroOf[system]) / millisecondsInDay;

/** The serial number of a day. */
export const serialOfDay = (day: IsoDate, system: DateSystem): number => serialOfMoment(Date.parse(`${day}T00:00:00Z`), system);
