/** A file that may take long is read in a worker first, so that the page stays usable meanwhile and the reading can be given up. */
import { declaredSize } from "../host/embedded/package/zip";
import { carriedFile } from "./carried";

/** What the worker says: that its program has arrived, and then what came of the file. */
export type TrialAnswer = { readonly is: "started" } | TrialEnd;
/** How a trial ends: `milliseconds` is what opening and reading the file took. */
type TrialEnd =
  | { readonly is: "opens"; readonly milliseconds: number }
  | { readonly is: "refused"; readonly words: string }
  | { readonly is: "given up" };
export type Trial = { readonly ended: Promise<TrialEnd>; readonly giveUp: () => void };

/** As much of a worker as is used here, so that a test can stand in for one. */
export type TrialWorker = {
  readonly postMessage: (bytes: Uint8Array) => void;
  readonly terminate: () => void;
  onmessage: ((event: { readonly data: TrialAnswer }) => void) | null;
  onerror: ((event: { readonly message: string }) => void) | null;
};

/** What packs to less, and unpacks to less, is read before anybody would notice. */
const [mostPacked, mostUnpacked] = [256 * 1024, 2 * 1024 * 1024];

/** Whether reading the file may take so long that it is tried first; a part that lies about its size is small by then, or refused. */
export function needsTrial(bytes: Uint8Array): boolean {
  return bytes.length > mostPacked || (declaredSize(bytes) ?? 0) > mostUnpacked;
}

function startWorker(): TrialWorker {
  const carried = carriedFile("trial.js");
  if (carried === null) return new Worker(new URL("./trialWorker.ts", import.meta.url)) as TrialWorker;
  return new Worker(URL.createObjectURL(new Blob([carried], { type: "text/javascript" }))) as TrialWorker;
}

/**
 * Tries a file. A worker whose program does not arrive tries nothing: then the page opens the file without, as it would without
 * workers; one that breaks down on the file has refused it.
 */
export function trialOf(bytes: Uint8Array, start: () => TrialWorker = startWorker): Trial {
  const worker = start();
  let end: (how: TrialEnd) => void = () => {};
  const ended = new Promise<TrialEnd>((resolve) => {
    end = (how) => {
      worker.terminate();
      resolve(how);
    };
  });
  let hasStarted = false;
  worker.onmessage = ({ data }) => {
    if (data.is !== "started") return end(data);
    hasStarted = true;
    worker.postMessage(bytes);
  };
  worker.onerror = ({ message }) =>
    end(hasStarted ? { is: "refused", words: `Reading it broke down: ${message}.` } : { is: "opens", milliseconds: 0 });
  return { ended, giveUp: () => end({ is: "given up" }) };
}
