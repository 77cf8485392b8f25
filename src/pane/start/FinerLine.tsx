import { useState } from "react";
import type { Season } from "../../core/season";
import { usePane } from "../paneContext";
import { finerSteps, type Finer } from "./finer";

/** One thing at a time that would make the figures finer, until it is done or put away. */
export function FinerLine({ season, tables }: { readonly season: Season; readonly tables: ReadonlySet<string> }) {
  const { open, jump } = usePane();
  const [away, setAway] = useState<ReadonlySet<Finer["id"]>>(new Set());
  const [step] = finerSteps(season).filter(({ id }) => !away.has(id));
  if (step === undefined) return null;
  const go = () => {
    if (step.id === "bills") open("inputs");
    else if (tables.has(step.table)) jump({ table: step.table });
    else open("more");
  };
  return (
    <p className="pn-note">
      Finer: {step.words}{" "}
      <button type="button" className="pn-link" onClick={go}>
        {step.id === "bills" ? "What did you buy?" : `Go to ${step.table}`}
      </button>{" "}
      <button type="button" className="pn-link" aria-label={`Not now: ${step.words}`} onClick={() => setAway(new Set([...away, step.id]))}>
        Not now
      </button>
    </p>
  );
}
