import { Button } from "@fluentui/react-components";
import type { Draft } from "./drafts";

export type DraftsOfferedProps = {
  readonly drafts: readonly Draft[];
  readonly open: (draft: Draft) => void;
  readonly discard: (draft: Draft) => void;
};

/** Workbooks that were not saved when their page ended: each can be opened again or let go. */
export function DraftsOffered({ drafts, open, discard }: DraftsOfferedProps) {
  if (drafts.length === 0) return null;
  const [handedOut, lost] = [drafts.filter((each) => each.isHandedOut), drafts.filter((each) => !each.isHandedOut)];
  const list = (some: readonly Draft[]) => (
    <ul>
      {some.map((draft) => (
        <li key={draft.id}>
          <span className="draft-name">
            {draft.name}, {momentOf(draft.at)}
          </span>
          <Button size="small" appearance="primary" onClick={() => open(draft)}>
            Open the draft<span className="unseen"> of {draft.name}</span>
          </Button>
          <Button size="small" onClick={() => discard(draft)}>
            Discard<span className="unseen"> the draft of {draft.name}</span>
          </Button>
        </li>
      ))}
    </ul>
  );
  return (
    <section className="drafts" aria-label="Drafts kept in this browser">
      {lost.length > 0 && (
        <>
          <p>Entries that no file has are kept in this browser from before:</p>
          {list(lost)}
        </>
      )}
      {handedOut.length > 0 && (
        <details>
          <summary>Handed to the browser&apos;s downloads, in case a file did not arrive: {handedOut.length}</summary>
          {list(handedOut)}
        </details>
      )}
    </section>
  );
}

const momentOf = (at: number): string =>
  new Date(at).toLocaleString(undefined, { day: "numeric", month: "long", hour: "2-digit", minute: "2-digit" });
