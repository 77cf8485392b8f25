/** Which problems make the figures of a subject incomplete. */
import type { Target } from "../core/row";
import type { Season } from "../core/season";
import { toFix, type Problem, type Subject } from "./problem";

const keyOf = (subject: Subject): string => ("name" in subject ? `${subject.of} ${subject.name}` : subject.of);

/** Tables whose figures decide what a field bears of the costs that are shared by revenue. */
const revenueTables = new Set(["Crops", "Fields", "Harvest", "Stand counts"]);

/**
 * Follows what each problem touches to everything that rests on it: an item to the fields that use it, or to the farm
 * where it is charged as it is bought; a machine to the fields that it works; a field to its crop; a crop to its fields;
 * all of them to the farm, and the farm to all. Where a cost is shared by revenue, what changes the revenue of one field
 * changes the cost of all. A change rests on the field or crop that it sells; what is wrong in the change itself touches
 * nothing else. What is only to check makes nothing incomplete and is left aside.
 */
export function problemsBySubject(season: Season, all: readonly Problem[]): (subject: Subject) => readonly Problem[] {
  const problems = toFix(all);
  if (problems.length === 0) return () => problems;
  const fieldsOfCrop = (crop: string) => season.fields.filter((field) => field.crop === crop);
  const cropOfField = new Map(season.fields.map((field) => [field.name, field.crop]));
  const chargedAsUsed = new Set(season.items.filter((item) => item.charged === "as used").map((item) => item.name));
  const byRevenue = season.items.some((item) => item.charged === "by revenue") || season.otherCosts.some((cost) => cost.by === "revenue");
  const usedIn = usersOfItems(season);
  // In the order of the problems, each but once.
  const bySubject = new Map<string, Problem[]>();
  const mark = (key: string, problem: Problem) => {
    const marked = bySubject.get(key);
    if (marked === undefined) bySubject.set(key, [problem]);
    else if (marked.at(-1) !== problem) marked.push(problem);
  };
  const markField = (name: string, problem: Problem) => {
    mark(`field ${name}`, problem);
    const crop = cropOfField.get(name);
    if (crop !== undefined) mark(`crop ${crop}`, problem);
  };
  const workedBy = fieldsOfMachines(season);
  const names = (of: Subject["of"], all: readonly { readonly name: string }[]) => all.map(({ name }) => `${of} ${name}`);
  const known = new Set([...names("field", season.fields), ...names("crop", season.crops), ...names("item", season.items), ...names("machine", season.machines ?? [])]);
  // Of what is not in the season at all nobody can say how far it would reach.
  const isLost = (subject: Subject) => subject.of !== "farm" && subject.of !== "change" && !known.has(keyOf(subject));
  const movesRevenue = (subject: Subject, { at }: Problem) => byRevenue && (subject.of === "field" || subject.of === "crop") && revenueTables.has(at.table);
  /** What touches all is kept once, however many subjects there are. */
  const ofAll: Problem[] = [];
  const ofFarm: Problem[] = [];
  const position = new Map(problems.map((problem, index) => [problem, index]));
  for (const problem of problems) {
    if (problem.touches.length === 0 || problem.touches.some(({ of }) => of !== "change")) ofFarm.push(problem);
    if (problem.touches.some((subject) => subject.of === "farm" || isLost(subject) || movesRevenue(subject, problem))) {
      ofAll.push(problem);
      continue;
    }
    for (const subject of problem.touches) {
      mark(keyOf(subject), problem);
      if (subject.of === "field") markField(subject.name, problem);
      else if (subject.of === "crop") for (const field of fieldsOfCrop(subject.name)) mark(`field ${field.name}`, problem);
      // How much of an item is used in one field changes no other field's cost, unless the item is charged as bought.
      else if (subject.of === "item" && !(problem.at.table === "Applications" && chargedAsUsed.has(subject.name))) for (const field of usedIn.get(subject.name)!) markField(field, problem);
      else if (subject.of === "machine") for (const field of workedBy.get(subject.name) ?? []) markField(field, problem);
    }
  }
  return (subject) => {
    if (subject.of === "farm") return ofFarm;
    const sold = subject.of === "change" ? soldBy(season, subject.name) : [];
    const own = [keyOf(subject), ...sold].flatMap((key) => bySubject.get(key) ?? []);
    if (own.length === 0) return ofAll;
    return [...new Set([...ofAll, ...own])].sort((a, b) => position.get(a)! - position.get(b)!);
  };
}

/** The field or crop whose grain a change sells, as a key. */
const soldBy = ({ changes = [] }: Season, name: string): readonly string[] =>
  changes.filter((change) => change.name === name && change.target !== null && change.lines.some(({ sellsCrop }) => sellsCrop))
    .map(({ target }) => ("field" in target! ? `field ${target.field}` : `crop ${target!.crop}`));

/** The fields that each machine works. */
function fieldsOfMachines(season: Season): ReadonlyMap<string, ReadonlySet<string>> {
  const fields = new Map((season.machines ?? []).map(({ name }) => [name, new Set<string>()]));
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
