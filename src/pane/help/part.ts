/** What the help is made of: plain data, which the pane shows folded and the build writes as a page. */

export type Terms = readonly (readonly [term: string, meaning: string])[];

export type HelpBlock =
  | { readonly is: "words"; readonly text: string }
  | { readonly is: "list"; readonly items: readonly string[] }
  | { readonly is: "terms"; readonly terms: Terms };

export type HelpPart = {
  /** Letters and hyphens, for a link to it. */
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly HelpBlock[];
  /** What is looked up by itself, such as one table. */
  readonly parts?: readonly HelpPart[];
};

export const words = (text: string): HelpBlock => ({ is: "words", text });
export const list = (...items: readonly string[]): HelpBlock => ({ is: "list", items });
export const terms = (...all: Terms): HelpBlock => ({ is: "terms", terms: all });

/** The same part with all its words put as `say` puts them. */
export function putInto({ id, title, blocks, parts }: HelpPart, say: (words: string) => string): HelpPart {
  const put = (block: HelpBlock): HelpBlock => {
    if (block.is === "words") return words(say(block.text));
    return block.is === "list"
      ? list(...block.items.map(say))
      : terms(...block.terms.map(([term, meaning]) => [say(term), say(meaning)] as const));
  };
  return { id, title: say(title), blocks: blocks.map(put), ...(parts !== undefined && { parts: parts.map((each) => putInto(each, say)) }) };
}

/** All that a part says, its own parts included, for whoever looks for a word. */
export const saidIn = ({ title, blocks, parts = [] }: HelpPart): string =>
  [
    title,
    ...blocks.flatMap((block) => (block.is === "words" ? [block.text] : block.is === "list" ? block.items : block.terms.flat())),
    ...parts.map(saidIn),
  ].join("\n");
