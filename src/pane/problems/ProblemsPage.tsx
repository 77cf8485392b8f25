import { Button } from "@fluentui/react-components";
import type { PageProps } from "../pages";
import { usePane } from "../paneContext";
import { problemsView, type ProblemView } from "./problemsView";

/** Every problem with its place, what was found and what to do. */
export function ProblemsPage({ report, problemsOf }: PageProps) {
  const { showProblems } = usePane();
  const { summary, isPart, groups } = problemsView(report, problemsOf);
  return (
    <>
      <p>{summary}</p>
      {isPart && <Button onClick={() => showProblems(null)}>Show all problems</Button>}
      {groups.map(({ table, problems }) => (
        <section key={table} className="pn-card" aria-label={`Problems in ${table}`}>
          <h3>{table}</h3>
          <ul className="pn-problems">{problems.map((problem) => <ProblemLine key={problem.key} table={table} problem={problem} />)}</ul>
        </section>
      ))}
    </>
  );
}

function ProblemLine({ table, problem: { where, what, found, remedy, at } }: { readonly table: string; readonly problem: ProblemView }) {
  const { jump } = usePane();
  return (
    <li>
      <p><button type="button" className="pn-link" onClick={() => jump(at)}><span className="pn-unseen">{table}, </span>{where}</button>{what}</p>
      {found !== "" && <p>Found: “{found}”</p>}
      <p className="pn-remedy">{remedy}</p>
    </li>
  );
}
