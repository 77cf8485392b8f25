import { Fragment, useState } from "react";
import { Button } from "../parts/Button";
import type { PageProps } from "../page";
import { usePane } from "../paneContext";
import { ReadTableAs, TakeRowsIn } from "./RowsToTakeIn";
import { gradeTitles, problemsView, type ProblemView } from "./problemsView";

/** So many problems are listed at a time: a block pasted in the wrong place makes thousands. */
const atATime = 300;

/** Every entry to fix with its place, what was found and what to do. */
export function EntriesPage({ report, problemsOf }: PageProps) {
  const { showProblems, format } = usePane();
  const [most, setMost] = useState(atATime);
  const { summary, isPart, groups, more } = problemsView(report, problemsOf, format, most);
  return (
    <>
      <p>{summary}</p>
      {isPart && <Button onClick={() => showProblems(null)}>Show all entries to fix</Button>}
      {groups.map(({ table, grade, problems }, index) => (
        <Fragment key={`${grade} ${table}`}>
          {grade === "check" && groups[index - 1]?.grade !== grade && <p className="pn-grade">{gradeTitles[grade]}</p>}
          <section className="pn-card" aria-label={grade === "fix" ? `Entries to fix in ${table}` : `To check in ${table}`}>
            <h3>{table}</h3>
            <ul className="pn-problems">
              {problems.map((problem) => (
                <ProblemLine key={problem.key} table={table} problem={problem} />
              ))}
            </ul>
          </section>
        </Fragment>
      ))}
      {more > 0 && (
        <Button
          onClick={() => setMost(most + atATime)}
        >{`Show ${format.count(Math.min(more, atATime))} of ${format.count(more)} more`}</Button>
      )}
    </>
  );
}

function ProblemLine({
  table,
  problem: { where, cell, what, found, remedy, at, other, takesIn, readsAs },
}: {
  readonly table: string;
  readonly problem: ProblemView;
}) {
  const { jump } = usePane();
  return (
    <li>
      <p>
        <button type="button" className="pn-link" onClick={() => jump(at)}>
          <span className="pn-unseen">{table}, </span>
          {where}
        </button>
        {cell !== "" && <span className="pn-note"> ({cell})</span>}
        {what}
      </p>
      {found !== "" && <p>Found: “{found}”</p>}
      {other !== null && (
        <p>
          See also{" "}
          <button type="button" className="pn-link" onClick={() => jump(other.at)}>
            {other.words}
          </button>
        </p>
      )}
      <p className="pn-remedy">{remedy}</p>
      {takesIn !== null && <TakeRowsIn table={at.table} label={takesIn} />}
      {readsAs !== null && <ReadTableAs table={at.table} own={readsAs} />}
    </li>
  );
}
