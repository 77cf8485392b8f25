/** Starts the desk. The program proper is loaded by this small one, so that a fault in loading it can be shown too. */
import { carriedId } from "../pane/helpAddress";
import { showFault, showFromDisk } from "./faultPage";

const place = document.getElementById("desk");
if (place === null) throw new Error("The page has no element to start in.");

// From a disk a browser lets a page load nothing that lies beside it: only the desk as one file, which carries all of it, works there.
if (location.protocol === "file:" && document.getElementById(carriedId) === null) showFromDisk(place);
else
  import("./startDesk")
    .then(({ startDesk }) => startDesk(place))
    .catch((fault: unknown) => {
      showFault(place, fault, null);
      throw fault;
    });
