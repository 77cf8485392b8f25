/** The names that contain what is typed, those that begin with it first. */
export function matching(choices: readonly string[], typed: string): readonly string[] {
  const at = (choice: string) => choice.toLowerCase().indexOf(typed);
  return [...choices.filter((choice) => at(choice) === 0), ...choices.filter((choice) => at(choice) > 0)];
}
