/** Which problems make the figures of a subject incomplete. */
import type { Season, Target } from "../core/season";
import type { Problem, Subject } from "./problem";

const keyOf = (subject: Subject): string => ("name" in subject ? `${subject.of} ${subject.name}` : subject.of);

/**
 * Follows what each problem touches to everything that rests on it: an item to the fields that use it, or to the farm
 * where it is charged as it is bought; a machine to the fields that it works; a field to its crop; a crop to its fields;
 * all of them to the farm, and the farm to all. A change rests on the field or crop that it sells; what is wrong in the
 * change itself touches nothing else.
 */
export function problemsBySubject(season: Season, problems: readonly Problem[]): (subject: Subject) => readonly Problem[] {
  const fieldsOfCrop = (crop: string) => season.fields.filter((field) => field.crop === crop);
  const cropOfField = new Map(season.fields.map((field) => [field.name, field.crop]));
  const usedIn = usersOfItems(season);
  const bySubject = new Map<string, Set<Problem>>();
  const mark = (key: string, problem: Problem) => {
    const marked = bySubject.get(key) ?? new Set();
    marked.add(problem);
    bySubject.set(key, marked);
  };
  const markField = (name: string, problem: Problem) => {
    mark(`field ${name}`, problem);
    const crop = cropOfField.get(name);
    if (crop !== undefined) mark(`crop ${crop}`, problem);
  };
  const workedBy = fieldsOfMachines(season);
  const markAll = (problem: Problem) => {
    for (const change of season.changes ?? []) mark(`change ${change.name}`, problem);
    for (const field of season.fields) markField(field.name, problem);
    for (const crop of season.crops) mark(`crop ${crop.name}`, problem);
    for (const item of season.items) mark(`item ${item.name}`, problem);
  };
  // Of what is not in the season at all nobody can say how far it would reach.
  const known = new Set([...(season.machines ?? []).map(({ name }) => `machine ${name}`), ...season.crops.map(({ name }) => `crop ${name}`), ...season.fields.map(({ name }) => `field ${name}`), ...season.items.map(({ name }) => `item ${name}`)]);
  const isLost = (subject: Subject) => subject.of !== "change" && !known.has(keyOf(subject));
  for (const problem of problems) {
    if (problem.touches.length === 0 || problem.touches.some(({ of }) => of !== "change")) mark("farm", problem);
    for (const subject of problem.touches) {
      mark(keyOf(subject), problem);
      if (subject.of === "farm" || isLost(subject)) markAll(problem);
      else if (subject.of === "field") markField(subject.name, problem);
      else if (subject.of === "crop") for (const field of fieldsOfCrop(subject.name)) mark(`field ${field.name}`, problem);
      else if (subject.of === "item") for (const field of usedIn.get(subject.name)!) markField(field, problem);
      else if (subject.of === "machine") for (const field of workedBy.get(subject.name) ?? []) markField(field, problem);
    }
  }
  // In the order of the list, whichever way a problem was reached.
  return (subject) => {
    const sold = subject.of === "change" ? soldBy(season, subject.name) : [];
    const sets = [keyOf(subject), ...sold].map((key) => bySubject.get(key)).filter((set) => set !== undefined);
    return problems.filter((problem) => sets.some((set) => set.has(problem)));
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
