/** What the help is made of: plain data, which the pane shows folded and the build writes as a page. */

export type Terms = readonly (readonly [term: string, meaning: string])[];

export type Block =
  | { readonly is: "words"; readonly text: string }
  | { readonly is: "list"; readonly items: readonly string[] }
  | { readonly is: "terms"; readonly terms: Terms };

export type Part = {
  /** Letters and hyphens, for a link to it. */
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly Block[];
  /** What is looked up by itself, such as one table. */
  readonly parts?: readonly Part[];
};

export const words = (text: string): Block => ({ is: "words", text });
export const list = (...items: readonly string[]): Block => ({ is: "list", items });
export const terms = (...all: Terms): Block => ({ is: "terms", terms: all });

/** All that a part says, its own parts included, for whoever looks for a word. */
export const saidIn = ({ title, blocks, parts = [] }: Part): string =>
  [title, ...blocks.flatMap((block) => (block.is === "words" ? [block.text] : block.is === "list" ? block.items : block.terms.flat())), ...parts.map(saidIn)].join("\n");
