import { useEffect, useState } from "react";
import { Button } from "./parts/Button";
import type { HostState, LastEntry, WorkbookHost } from "../host/workbookHost";
import { failureWords, outcome } from "./failure";

export type HostLineProps = { readonly host: WorkbookHost; readonly refresh: () => void; readonly fault: (error: unknown) => void };

const nothing: HostState = { waiting: null, late: null, lastEntry: null };

/**
 * What the workbook program is at: an entry of which it is not known what became, one that came late, and the last one, to be
 * taken back.
 */
export function HostLine({ host, refresh, fault }: HostLineProps) {
  const [state, setState] = useState(nothing);
  const [seen, setSeen] = useState<string | null>(null);
  const [hidden, setHidden] = useState<LastEntry | null>(null);
  const [failed, setFailed] = useState("");
  const [isTaking, setTaking] = useState(false);
  useEffect(() => host.follow?.(setState), [host]);
  const { waiting, late, lastEntry } = state;

  const takeBack = async (entry: LastEntry) => {
    setTaking(true);
    setFailed("");
    const taken = await outcome(entry.takeBack);
    setTaking(false);
    if (!taken.ok) return setFailed(failureWords(taken.failure, "Nothing was taken back."));
    refresh();
  };
  return (
    <div aria-live="polite">
      {waiting !== null && (
        <div className="pn-notice pn-notice-failed">
          <p>{waiting}</p>
        </div>
      )}
      {late !== null && late !== seen && (
        <div className="pn-notice pn-notice-failed">
          <p>{late}</p>
          <span className="pn-buttons">
            <Button size="small" onClick={() => setSeen(late)}>
              Dismiss
            </Button>
          </span>
        </div>
      )}
      {lastEntry !== null && lastEntry !== hidden && (
        <div className="pn-notice pn-notice-done">
          <p>
            Entered from here: {lastEntry.words}. {failed}
          </p>
          <span className="pn-buttons">
            <Button
              size="small"
              disabledFocusable={isTaking}
              onClick={() => {
                if (!isTaking) takeBack(lastEntry).catch(fault);
              }}
            >
              {isTaking ? "Taking back …" : "Take back"}
            </Button>
            <Button size="small" onClick={() => setHidden(lastEntry)}>
              Dismiss
            </Button>
          </span>
        </div>
      )}
    </div>
  );
}
