/** The drop-down list of a cell while something is typed into it. */

/** What the list offers for a typed text, those that begin with it first; all of it for no text. */
export function offered(choices: readonly string[], typed: string): string[] {
  const wanted = typed.trim().toLowerCase();
  if (wanted === "") return [...choices];
  const begins = choices.filter((choice) => choice.toLowerCase().startsWith(wanted));
  const holds = choices.filter((choice) => !choice.toLowerCase().startsWith(wanted) && choice.toLowerCase().includes(wanted));
  return [...begins, ...holds];
}

/**
 * The choice that a typed text can only mean: the one it spells, in any case, or the only one that begins with it; of
 * several, the one that all others only add words to, such as "done" beside "done as planned"; else `null`.
 */
export function meant(choices: readonly string[], typed: string): string | null {
  const wanted = typed.trim().toLowerCase();
  if (wanted === "") return null;
  const spelled = choices.find((choice) => choice.toLowerCase() === wanted);
  const begins = choices.filter((choice) => choice.toLowerCase().startsWith(wanted));
  return (
    spelled ??
    begins.find((choice) => begins.every((other) => other === choice || other.toLowerCase().startsWith(`${choice.toLowerCase()} `))) ??
    null
  );
}
