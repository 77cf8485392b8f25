/** Does something after so many milliseconds; returns what calls it off. A test brings a clock of its own. */
export type Later = (milliseconds: number, then: () => void) => () => void;

export const laterInPage: Later = (milliseconds, then) => {
  const timer = setTimeout(then, milliseconds);
  return () => clearTimeout(timer);
};
