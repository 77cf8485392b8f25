/** Which problems make the figures of a subject incomplete. */
import type { Target } from "../core/row";
import type { Season } from "../core/season";
import { toFix, type Problem, type Subject } from "./problem";

const keyOf = (subject: Subject): string => ("name" in subject ? `${subject.of} ${subject.name}` : subject.of);

/** Whether no figure of the season's money rests on a subject. */
const aside: ReadonlySet<Subject["of"]> = new Set(["planter", "weeds", "hybrids", "weather", "years", "map"]);
const isAside = (of: Subject["of"]): boolean => aside.has(of);

/** Tables whose figures decide what a field bears of the costs that are shared by revenue. */
const revenueTables = new Set(["Crops", "Fields", "Harvest", "Stand counts"]);

/**
 * Follows what each problem touches to everything that rests on it: an item to the fields that use it, or to the farm
 * where it is charged as it is bought; a machine to the fields that it works; a field to its crop; a crop to its fields;
 * all of them to the farm, and the farm to all. Where a cost is shared by revenue, what changes the revenue of one field
 * changes the cost of all. A change rests on the field or crop that it sells; what is wrong in the change itself touches
 * nothing else, nor does what is wrong in the checks of the planter; what is wrong in the cash flow alone leaves the budgets
 * complete. What is only to check makes nothing
 * incomplete and is ignored.
 */
export function problemsBySubject(season: Season, all: readonly Problem[]): (subject: Subject) => readonly Problem[] {
  const problems = toFix(all);
  if (problems.length === 0) return () => problems;
  const reach = reachOf(season);
  const groups = groupsOf(problems, season).map(({ touches, spreads, positions }) => ({ reached: reach(touches, spreads), positions }));
  const ofFarm = problems.filter(
    ({ touches }) => touches.length === 0 || touches.some(({ of }) => of !== "change" && of !== "cash flow" && !isAside(of)),
  );
  const ofCashFlow = problems.filter(({ touches }) => touches.length === 0 || touches.some(({ of }) => of !== "change" && !isAside(of)));
  const ofAll = groups.filter(({ reached }) => reached === "all");
  const bySubject = new Map<string, Group[]>();
  for (const group of groups) {
    if (group.reached === "all") continue;
    for (const key of group.reached) {
      const groupsHere = bySubject.get(key);
      if (groupsHere === undefined) bySubject.set(key, [group]);
      else groupsHere.push(group);
    }
  }
  // Many subjects have the same groups.
  const known = new Map<string, readonly Problem[]>();
  return (subject) => {
    if (subject.of === "farm") return ofFarm;
    if (subject.of === "cash flow") return ofCashFlow;
    const sold = subject.of === "change" ? soldBy(season, subject.name) : [];
    const own = new Set([...ofAll, ...[keyOf(subject), ...sold].flatMap((key) => bySubject.get(key) ?? [])]);
    const key = [...own].map(({ positions }) => positions[0]).join();
    let found = known.get(key);
    if (found === undefined) {
      // In the order of the problems; each is in one group alone.
      const positions = Uint32Array.from([...own].flatMap((group) => group.positions)).sort();
      known.set(key, (found = Array.from(positions, (position) => problems[position]!)));
    }
    return found;
  };
}

/** How far the problems of a table reach beyond what they touch. */
type Spreads = "revenue" | "use" | "otherwise";

/** Problems that touch the same, by their places in the list: a wrong setting makes a hundred thousand of one sort. */
type Group = { readonly reached: ReadonlySet<string> | "all"; readonly positions: readonly number[] };

function groupsOf(problems: readonly Problem[], { items, otherCosts }: Season) {
  const byRevenue = items.some((item) => item.charged === "by revenue") || otherCosts.some((cost) => cost.by === "revenue");
  const groups = new Map<string, { readonly touches: readonly Subject[]; readonly spreads: Spreads; readonly positions: number[] }>();
  problems.forEach(({ touches, at }, position) => {
    const spreads = byRevenue && revenueTables.has(at.table) ? "revenue" : at.table === "Applications" ? "use" : "otherwise";
    const key = `${spreads}\n${touches.map(keyOf).join("\n")}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { touches, spreads, positions: [position] });
    else group.positions.push(position);
  });
  return [...groups.values()];
}

/** All that rests on what is touched, as keys; "all" where that is everything. */
function reachOf(season: Season): (touches: readonly Subject[], spreads: Spreads) => ReadonlySet<string> | "all" {
  const cropOfField = new Map(season.fields.map((field) => [field.name, field.crop]));
  const asUsed = new Set(season.items.filter((item) => item.charged === "as used").map((item) => item.name));
  const [usedIn, workedBy] = [usersOfItems(season), fieldsOfMachines(season)];
  const names = (of: Subject["of"], all: readonly { readonly name: string }[]) => all.map(({ name }) => `${of} ${name}`);
  const known = new Set([
    ...names("field", season.fields),
    ...names("crop", season.crops),
    ...names("item", season.items),
    ...names("machine", season.machines),
  ]);
  // Of what is not in the season at all nobody can say how far it would reach.
  const isLost = (subject: Subject) => "name" in subject && subject.of !== "change" && !known.has(keyOf(subject));
  const andCrop = (field: string): readonly string[] => {
    const crop = cropOfField.get(field);
    return crop === undefined ? [`field ${field}`] : [`field ${field}`, `crop ${crop}`];
  };
  const beyond = (subject: Subject, spreads: Spreads): readonly string[] => {
    switch (subject.of) {
      case "field":
        return andCrop(subject.name);
      case "crop":
        return season.fields.filter((field) => field.crop === subject.name).map((field) => `field ${field.name}`);
      // How much of an item is used in one field changes no other field's cost, unless the item is charged as bought.
      case "item":
        return spreads === "use" && asUsed.has(subject.name) ? [] : [...usedIn.get(subject.name)!].flatMap(andCrop);
      case "machine":
        return [...(workedBy.get(subject.name) ?? [])].flatMap(andCrop);
      case "farm":
      case "cash flow":
      case "planter":
      case "weeds":
      case "hybrids":
      case "weather":
      case "years":
      case "map":
      case "change":
        return [];
    }
  };
  const isOfAll = (subject: Subject, spreads: Spreads) =>
    subject.of === "farm" || isLost(subject) || (spreads === "revenue" && (subject.of === "field" || subject.of === "crop"));
  return (touches, spreads) =>
    touches.some((subject) => isOfAll(subject, spreads))
      ? "all"
      : new Set(touches.flatMap((subject) => [keyOf(subject), ...beyond(subject, spreads)]));
}

/** The field or crop whose grain a change sells, as a key. */
const soldBy = ({ changes }: Season, name: string): readonly string[] =>
  changes
    .filter((change) => change.name === name && change.target !== null && change.lines.some(({ sellsCrop }) => sellsCrop))
    .map(({ target }) => ("field" in target! ? `field ${target.field}` : `crop ${target!.crop}`));

/** The fields that each machine works. */
function fieldsOfMachines(season: Season): ReadonlyMap<string, ReadonlySet<string>> {
  const fields = new Map(season.machines.map(({ name }) => [name, new Set<string>()]));
  for (const { cost, target } of season.operations) {
    if (cost.basis === "machine") for (const name of fieldsOf(season, target)) fields.get(cost.machine)?.add(name);
  }
  return fields;
}

const fieldsOf = ({ fields }: Season, target: Target): readonly string[] =>
  "field" in target ? [target.field] : fields.filter((field) => field.crop === target.crop).map((field) => field.name);

/** The fields whose cost an item enters. */
function usersOfItems(season: Season): ReadonlyMap<string, ReadonlySet<string>> {
  const all = season.fields.map((field) => field.name);
  const users = new Map(season.items.map((item) => [item.name, new Set(item.charged === "as used" ? [] : all)]));
  for (const { item, target } of season.applications) for (const name of fieldsOf(season, target)) users.get(item)?.add(name);
  return users;
}
