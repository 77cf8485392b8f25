import { createRoot } from "react-dom/client";
import { Desk } from "./Desk";
import "./desk.css";
import { FaultBoundary } from "./FaultBoundary";
import { showStartupFault } from "./startupFault";

const root = document.getElementById("desk");
if (root === null) throw new Error("The page has no element to start in.");
try {
  createRoot(root).render(<FaultBoundary><Desk /></FaultBoundary>);
} catch (fault) {
  showStartupFault(root, fault);
  throw fault;
}
