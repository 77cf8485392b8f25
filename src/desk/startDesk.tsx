import { createRoot } from "react-dom/client";
import { showCarriedHelp } from "./carriedHelp";
import { Desk } from "./Desk";
import "./desk.css";
import { showFault } from "./faultPage";
import { download } from "./files";
import type { AtHand, OpenBook } from "./openBook";

const rescue = async ({ name, book }: OpenBook): Promise<void> => download({ name, bytes: (await book.save()).bytes });

/** Puts the desk into the page. A fault while it draws itself is shown in its place, and the workbook at hand can be saved. */
export function startDesk(place: HTMLElement): void {
  if (showCarriedHelp(location.hash)) return;
  const atHand: AtHand = { current: null, isTyping: () => false, isFormTyped: () => false };
  const inside = document.createElement("div");
  inside.className = "desk-root";
  place.replaceChildren(inside);
  createRoot(inside, {
    onUncaughtError: (fault) => {
      console.error(fault);
      const open = atHand.current;
      showFault(place, fault, open && { name: open.name, save: () => void rescue(open) });
    },
  }).render(<Desk atHand={atHand} />);
}
