import { subjectName, type Subject } from "../../workbook/problem";
import { usePane } from "../paneContext";

/** A triangle with a mark of exclamation, drawn in the colour of the text beside it. */
export const WarningMark = () => (
  <svg className="pn-mark" viewBox="0 0 16 16" aria-hidden="true">
    <path d="M8 1.5 15 14H1zM8 6v4M8 11.4v1" />
  </svg>
);

export type IncompleteProps = { readonly of: Subject; readonly problems: number };

/** Says that a figure is incomplete and leads to the entries to fix that make it so; nothing where there are none. */
export function Incomplete({ of, problems }: IncompleteProps) {
  const { showProblems, format } = usePane();
  if (problems === 0) return null;
  const name = subjectName(of);
  return (
    <button type="button" className="pn-incomplete" onClick={() => showProblems(of)}>
      <WarningMark />
      <span>
        Incomplete: {format.count(problems)} {problems === 1 ? "entry" : "entries"} to fix
        <span className="pn-unseen">, touching {name}</span>
      </span>
    </button>
  );
}
