import { useState } from "react";
import { Button } from "../parts/Button";
import type { Outcome } from "../failure";
import { failureNotice, usePane } from "../paneContext";

export type RemedyProps = {
  readonly label: string;
  /** What the label leaves out for those who do not see where the button stands. */
  readonly of: string;
  readonly mend: () => Promise<Outcome<string>>;
};

/** Mends a fault in one step, and says in words what was done. */
export function RemedyButton({ label, of, mend }: RemedyProps) {
  const { watch, tell, fault } = usePane();
  const [isBusy, setBusy] = useState(false);
  const press = async () => {
    if (isBusy) return;
    setBusy(true);
    const mended = await mend().finally(() => setBusy(false));
    if (!mended.ok) return tell(failureNotice(mended.failure, () => void press().catch(fault)));
    tell({ tone: "done", text: mended.value });
    await watch.refresh();
  };
  return (
    <Button size="small" disabledFocusable={isBusy} aria-label={`${label}: ${of}`} onClick={() => void press().catch(fault)}>
      {label}
    </Button>
  );
}
