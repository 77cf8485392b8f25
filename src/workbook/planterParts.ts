/**
 * What is looked at on a planter before the season, part by part, for the sheet that goes to the shed and for the names that are
 * offered. The limits are common practice, from memory where no source is named; the operator's manual rules.
 */

/** `each`: looked at row by row; `whole`: once for the planter. */
export type PartToCheck = { readonly part: string; readonly look: string; readonly of: "each" | "whole" };

export const planterParts: readonly PartToCheck[] = [
  { part: "Hitch and level", of: "whole", look: "Bar 20 to 22 in high, level or slightly up in front, at field tire pressure" },
  { part: "Frame, wings and markers", of: "whole", look: "Cracks, pins, bushings, hoses" },
  { part: "Opener disc", of: "each", look: "Diameter; common: 15 in new, replace at 14.5" },
  { part: "Opener contact", of: "each", look: "Length of contact between two cards; common: about 2 in" },
  { part: "Opener bearings", of: "each", look: "Turn by hand: no noise, no play" },
  { part: "Scrapers", of: "each", look: "Touch the blades, are not worn away" },
  { part: "Seed tube and guard", of: "each", look: "Not worn or curled at the end, sensor clean" },
  // Iowa State University, Planter pre-plant checklist: under 2 in up and down and 1 in to the side at the rear of the unit.
  { part: "Linkage, up and down", of: "each", look: "Play at the rear of the unit; replace at 2 in" },
  { part: "Linkage, to the side", of: "each", look: "Play at the rear of the unit; replace at 1 in" },
  { part: "Depth setting", of: "each", look: "Same notch, moves freely, stop not worn" },
  { part: "Gauge wheels", of: "each", look: "Against the blade, no gap; arm play, tire, bearing" },
  { part: "Down force", of: "each", look: "Springs or bags alike; nothing leaks" },
  { part: "Row cleaner or coulter", of: "each", look: "In line with the opener, coulter above its depth" },
  { part: "Closing wheels, gap", of: "each", look: "At the bottom; common: 1¼ in" },
  { part: "Closing wheels, alignment", of: "each", look: "Centred over the furrow, bearings, springs alike" },
  { part: "Meter", of: "each", look: "Run on a stand; discs or fingers, brush, belt" },
  { part: "Meter seal", of: "each", look: "Not worn or hard, whole all around" },
  { part: "Vacuum or air line", of: "each", look: "No leaks, no nests, nothing kinked" },
  { part: "Row drive", of: "each", look: "Chain not stiff, cable or motor turns freely, clutch" },
  { part: "Fan and pressure", of: "whole", look: "Gauge reads as the manual says, screens clean" },
  { part: "Drive and transmission", of: "whole", look: "Chains, sprockets, shafts, drive tires and their pressure" },
  { part: "Fertilizer and tanks", of: "whole", look: "Pumps, lines, orifices, knives; rinse with care" },
  { part: "Electrics and monitor", of: "whole", look: "Plugs clean, every row counted, harness not pinched" },
  { part: "Lights, flashers and markings", of: "whole", look: "All burn; reflectors and slow-moving emblem clean" },
  { part: "Sight from the cab", of: "whole", look: "Mirrors, cameras, windows; all rows seen or shown" },
];
