import { useMemo } from "react";
import { helpAddress } from "../helpAddress";
import { Disclosure } from "../parts/Disclosure";
import type { PageProps } from "../page";
import { usePane } from "../paneContext";
import { helpParts } from "./helpParts";
import { putInto, type HelpBlock, type HelpPart } from "./part";

/** The help, folded: a line a part, and a page of all of it to print. */
export function HelpPage({ report }: PageProps) {
  const { open, format } = usePane();
  const isEmpty = report.tablesFound.size === 0;
  const parts = useMemo(() => helpParts.map((part) => putInto(part, format.words)), [format]);
  return (
    <>
      <p>
        <button type="button" className="pn-link pn-back" onClick={() => open(isEmpty ? "season" : "more")}>
          ‹ {isEmpty ? "Start" : "More"}
        </button>
      </p>
      <section aria-label="Help by subject">
        {parts.map((part) => (
          <HelpPart key={part.id} part={part} />
        ))}
      </section>
      <p className="pn-note">
        <a className="pn-link" href={helpAddress()} target="_blank" rel="noreferrer">
          All of it on one page, to print
        </a>
      </p>
    </>
  );
}

const HelpPart = ({
  part: { title, blocks, parts = [] },
  look = "section",
}: {
  readonly part: HelpPart;
  readonly look?: "section" | "line";
}) => (
  <Disclosure look={look} label={title}>
    {blocks.map((block, index) => (
      <HelpBlock key={index} block={block} />
    ))}
    {parts.length > 0 && (
      <div>
        {parts.map((part) => (
          <HelpPart key={part.id} part={part} look="line" />
        ))}
      </div>
    )}
  </Disclosure>
);

function HelpBlock({ block }: { readonly block: HelpBlock }) {
  if (block.is === "words") return <p>{block.text}</p>;
  if (block.is === "list")
    return (
      <ul className="pn-bullets">
        {block.items.map((item) => (
          <li key={item}>{item}</li>
        ))}
      </ul>
    );
  return (
    <dl className="pn-hints">
      {block.terms.map(([term, meaning]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{meaning}</dd>
        </div>
      ))}
    </dl>
  );
}
