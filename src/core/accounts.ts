/** What the figures, the changes, the lender pages and the checks of a season are worked out from, each thing once. */
import { fieldFacts, type FieldFacts } from "./fieldFacts";
import { ReadingMemory } from "./readingMemory";
import { itemBooks, type ItemBook } from "./itemCosts";
import { loanYears } from "./loanCosts";
import type { LoanYear } from "./loanYear";
import { once } from "./once";
import { daysOut, type DaysOut } from "./operatingInterest";
import type { MachineCosts } from "./operationCosts";
import { boughtByItem } from "./boughtByItem";
import type { Season } from "./season";
import { seasonMachineCosts } from "./seasonMachineCosts";
import { seasonWork, type SeasonWork } from "./seasonWork";
import { fieldOutlooks, type FieldOutlook } from "./stand/fieldOutlook";
import { fieldWeather, placeRecords, type FieldWeather } from "./weather/fieldWeather";
import { maturingFields, type Maturing } from "./weather/maturing";

export type Accounts = {
  /** What they keep for the season that comes after an edit. */
  readonly kept: ReadingMemory;
  /** What planting, stand and unevenness let expect, of the fields that tell any of them, by name. */
  readonly outlooks: ReadonlyMap<string, FieldOutlook>;
  /** Every field with its crop and harvest, in the order of the table. */
  readonly facts: readonly FieldFacts[];
  /** Days that money waits for the repayment of the operating loan. */
  readonly days: DaysOut;
  /** The work of every item and operation in every field. */
  readonly work: SeasonWork;
  /** What was bought and is used of every item, in the order of the table. */
  readonly books: readonly ItemBook[];
  /** What each machine costs at each stage. */
  readonly machines: MachineCosts;
  /** The year of every loan, in the order of the table. */
  readonly loans: readonly LoanYear[];
  /** Heat and water of the planted fields that have a record, in the order of the table. */
  readonly weather: readonly FieldWeather[];
  /** When fields are projected to mature, planted or not. */
  readonly maturing: readonly Maturing[];
};

const known = new WeakMap<object, Accounts>();

/**
 * The accounts of a season, each worked out when it is first asked for and then kept as long as the season is. A season is never
 * changed: another one has accounts of its own.
 *
 * @param kept of the season before an edit, from which what rests on nothing that was touched is taken
 * @throws RangeError when asked for what rests on a field of an unknown crop or without area: the reader turns both away
 */
export function accounts(season: Season, kept = new ReadingMemory()): Accounts {
  let of = known.get(season);
  if (of === undefined) known.set(season, (of = accountsOf(season, kept)));
  return of;
}

function accountsOf(season: Season, kept: ReadingMemory): Accounts {
  const { settings, crops, fields, items, applications, operations } = season;
  const outlooks = once(() => {
    const { standCounts, standTables, published } = season;
    return kept.of("outlooks of fields", [settings, crops, fields, standCounts, standTables, published], () =>
      fieldOutlooks({ settings, crops, fields, standCounts, standTables, published }),
    );
  });
  const facts = once(() => {
    const { harvest } = season;
    return kept.of("facts of fields", [settings, crops, fields, harvest, outlooks()], () =>
      fieldFacts({ settings, crops, fields, harvest }, outlooks()),
    );
  });
  const days = once(() => kept.of("days out", [settings], () => daysOut(settings)));
  const work = once(() =>
    kept.of("work", [applications, operations, fields, items, facts()], () =>
      seasonWork({ applications, operations, fields, items }, facts()),
    ),
  );
  const books = once(() => itemBooks(season, facts(), boughtByItem(season.purchases, days().from), work().ofItems));
  const machines = once(() => {
    const { machines: entered } = season;
    return kept.of("costs of machines", [entered, settings, work()], () =>
      seasonMachineCosts({ machines: entered, settings }, work().ofOperations),
    );
  });
  const loans = once(() => loanYears(season));
  const records = once(() => placeRecords(season));
  const weather = once(() => fieldWeather(season, records()));
  const maturing = once(() => maturingFields(season, weather(), records()));
  return {
    kept,
    get outlooks() {
      return outlooks();
    },
    get facts() {
      return facts();
    },
    get days() {
      return days();
    },
    get work() {
      return work();
    },
    get books() {
      return books();
    },
    get machines() {
      return machines();
    },
    get loans() {
      return loans();
    },
    get weather() {
      return weather();
    },
    get maturing() {
      return maturing();
    },
  };
}
