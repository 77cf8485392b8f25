/** A field before and at planting, in sentences: the plan, the land, the planting and what was counted. */
import { daysBetween } from "../../core/numbers/day";
import type { Decimal } from "../../core/numbers/decimal";
import type { Field } from "../../core/season";
import type { FieldOutlook } from "../../core/stand/fieldOutlook";
import type { FieldStand } from "../../core/stand/fieldStand";
import { tableWords } from "../harvestNotes";
import { rentNotes } from "../rentNotes";
import { shownYield } from "../shown";
import { grouped } from "../sheets/amounts";
import { type Teller, yieldWords, plants, quantity, money, percent, areaWord, daysWords } from "./teller";

export function plannedLines(of: Teller): readonly string[] {
  const { entry, crop, day, report } = of;
  const { yieldGoal, provenYield, plannedPlanting, targetStand, rowWidth, variety } = entry;
  const rowUnit = report.season.settings.areaUnit === "ac" ? "in" : "cm";
  const planting = [
    ...(plannedPlanting === null ? [] : [`planting on ${day(plannedPlanting)}`]),
    ...(targetStand === null ? [] : [`${plants(targetStand)} plants per ${areaWord(of)} standing`]),
    ...(rowWidth === null ? [] : [`rows of ${quantity(rowWidth)} ${rowUnit}`]),
  ].join(", ");
  return [
    `${variety === null ? "" : `${variety}. `}Goal ${yieldWords(yieldGoal)} ${crop.yieldUnit} per ${areaWord(of)}` +
      `${provenYield === null ? "" : `, proven ${yieldWords(provenYield)}`}${planting === "" ? "" : `; ${planting}`}.`,
    ...landLines(of),
  ];
}

/** How the land is held; a flexible rent tells itself by the words that stand beside its figures everywhere. */
function landLines(of: Teller): readonly string[] {
  const { entry, field, crop, report } = of;
  const { tenure, rentPerArea, landChargePerArea, operatorShare } = entry;
  if (entry.flexibleRent) return rentNotes(report, { ...crop, fields: [field] });
  const share = operatorShare.eq("1") ? "" : `; ${percent(operatorShare)} of the crop is the operator's`;
  const rent = rentPerArea === null ? "" : `, ${money(rentPerArea)} per ${areaWord(of)}`;
  const charge = landChargePerArea === null ? "" : `, land charge ${money(landChargePerArea)} per ${areaWord(of)}`;
  return [`${tenure.charAt(0).toUpperCase()}${tenure.slice(1)}${rent}${charge}${share}.`];
}

export function plantedLines(of: Teller, outlook: FieldOutlook | undefined): readonly string[] {
  const { entry, field, crop, day } = of;
  const { planted, plannedPlanting, seedsDropped, uniformityLoss } = entry;
  if (planted === null && outlook === undefined) return field.final === null ? ["Not planted yet."] : [];
  const late = planted === null || plannedPlanting === null ? null : daysBetween(plannedPlanting, planted);
  const dropped = seedsDropped === null ? "" : `, ${grouped(seedsDropped)} seeds dropped per ${areaWord(of)}`;
  const moved = late === null || late.isZero() ? "" : `, ${daysWords(late.abs())} ${late.isNegative() ? "before" : "after"} the plan`;
  const { outlook: projected } = field.outlook.budget.yields;
  return [
    ...(planted === null ? [] : [`Planted on ${day(planted)}${moved}${dropped}.`]),
    ...(outlook === undefined || outlook.stand === null ? [] : countLines(of, outlook.stand)),
    ...(outlook === undefined || outlook.table === null ? [] : [tableWords(outlook.table, outlook.chosen)]),
    ...(field.final !== null
      ? []
      : [
          `Projected yield ${yieldWords(projected)} ${crop.yieldUnit} per ${areaWord(of)}` +
            `${uniformityLoss === null ? "" : ` after ${quantity(uniformityLoss)} % for unevenness, as entered`}: ${againstGoal(projected, entry)}.`,
        ]),
  ];
}

function againstGoal(projected: Decimal, { yieldGoal }: Field): string {
  const apart = shownYield(projected).minus(shownYield(yieldGoal));
  return apart.isZero() ? "the goal" : `${yieldWords(apart.abs())} ${apart.isNegative() ? "below" : "above"} the goal`;
}

function countLines(of: Teller, { summary, parts, emergence }: FieldStand): readonly string[] {
  const { areaUnit } = of.report.season.settings;
  const { places, interval, mean, from, to } = summary;
  const spots = `${places.toFixed()} ${places.eq("1") ? "spot" : "spots"}`;
  const named = parts.filter(({ name }) => name !== null);
  return [
    `Counted ${from === to ? `on ${of.day(to)}` : `${of.day(from)} to ${of.day(to)}`}: ${plants(mean)} plants per ${areaWord(of)} in ${spots}` +
      `${interval === null ? "" : `, likely ${plants(interval.low)} to ${plants(interval.high)}`}` +
      `${emergence === null ? "" : `; ${percent(emergence)} of the seeds dropped`}.`,
    ...(named.length === 0
      ? []
      : [
          `By part: ${parts
            .map(
              ({ name, area, summary: counted, outlook }) =>
                `${name ?? "rest of the field"} ${quantity(area)} ${areaUnit}, ` +
                `${counted === null ? "not counted" : `${plants(counted.mean)} plants`}${outlook === null ? "" : `, yield ${yieldWords(outlook)}`}`,
            )
            .join("; ")}.`,
        ]),
  ];
}
