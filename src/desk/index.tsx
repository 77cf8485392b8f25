/** Starts the desk. The program proper is loaded by this small one, so that a fault in loading it can be shown too. */
import { showFault } from "./faultPage";

const place = document.getElementById("desk");
if (place === null) throw new Error("The page has no element to start in.");

import("./startDesk")
  .then(({ startDesk }) => startDesk(place))
  .catch((fault: unknown) => {
    showFault(place, fault, null);
    throw fault;
  });
