import { useState } from "react";
import type { KeptSeason } from "../../workbook/next/keptSeason";
import { keepSeason, type SeasonKept } from "../commands/keepSeason";
import { lostWords } from "../commands/addEntries";
import { failureWords } from "../failure";
import { Button } from "../parts/Button";
import { ToldLine, type Told } from "../parts/Told";
import { usePane } from "../paneContext";

const counted = (count: number): string => (count === 1 ? "1 field" : `${count} fields`);

/** What was written, in words. */
const keptWords = ({ added, replaced, lost }: SeasonKept, year: string): string =>
  [
    ...(added === 0 ? [] : [`${counted(added)} of ${year} added to Past seasons.`]),
    ...(replaced === 0 ? [] : [`${counted(replaced)} of ${year} there already, and given the figures of today.`]),
  ].join(" ") + lostWords(lost);

/** Adds the finals of this season to the table Past seasons; keeping it again replaces them. */
export function KeepSeasonButton({ kept, year }: { readonly kept: KeptSeason; readonly year: string }) {
  const { host, watch, fault } = usePane();
  const [isWriting, setWriting] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const { rows, open } = kept;
  const keep = async () => {
    setWriting(true);
    setTold(null);
    const done = await keepSeason(host, kept);
    setWriting(false);
    setTold(
      done.ok
        ? { tone: "done", text: keptWords(done.value, year) }
        : { tone: "failed", text: failureWords(done.failure, "Nothing was written.") },
    );
    if (done.ok) await watch.refresh();
  };
  return (
    <>
      {open.length > 0 && (
        <p className="pn-note">
          Harvest not done, so not kept: {open.join(", ")}. {rows.length === 0 && "Enter Harvest done in the table Fields once it is."}
        </p>
      )}
      {rows.length > 0 && (
        <p className="pn-buttons">
          <Button
            disabledFocusable={isWriting}
            onClick={() => {
              if (!isWriting) keep().catch(fault);
            }}
          >
            {isWriting ? "Keeping …" : `Keep season ${year}: ${counted(rows.length)}`}
          </Button>
        </p>
      )}
      <ToldLine told={told} />
    </>
  );
}
