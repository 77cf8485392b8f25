import { useState } from "react";
import { failureWords, outcome } from "../failure";
import { ToldLine, type Told } from "../parts/Told";
import { usePane } from "../paneContext";

/** The choice that the pane opens by itself with this workbook; nothing where the host opens none. */
export function OpensWithPart() {
  const { host, fault } = usePane();
  const { opensWith } = host;
  const [isOn, setOn] = useState(() => opensWith?.isOn() ?? false);
  const [isChoosing, setChoosing] = useState(false);
  const [told, setTold] = useState<Told>(null);
  if (opensWith === undefined) return null;
  const choose = async (wanted: boolean) => {
    setChoosing(true);
    setTold(null);
    const chosen = await outcome(() => opensWith.choose(wanted));
    setChoosing(false);
    setOn(opensWith.isOn());
    setTold(
      chosen.ok
        ? { tone: "done", text: wanted ? "It opens with this workbook from now on. Save the workbook." : "It no longer opens by itself." }
        : { tone: "failed", text: failureWords(chosen.failure) },
    );
  };
  return (
    <section className="pn-card" aria-label="Opening this pane">
      <label className="pn-check">
        <input type="checkbox" checked={isOn} disabled={isChoosing} onChange={() => void choose(!isOn).catch(fault)} /> Open this pane by
        itself with this workbook
      </label>
      <p className="pn-note">Kept in the workbook, for everybody who has Pennyacre. Nobody else notices.</p>
      <ToldLine told={told} />
    </section>
  );
}
