/** What is shown when the page cannot go on. No library is used here, because one of them may be what failed. */

/** Saving what is open, offered beside the fault. */
export type Rescue = { readonly name: string; readonly save: () => void };

/**
 * Puts the fault in words into an element, with the details to copy into a report and, where a workbook is open, a button that
 * saves it.
 */
export function showFault(place: HTMLElement, fault: unknown, rescue: Rescue | null): void {
  const main = document.createElement("main");
  main.className = "starting";
  main.setAttribute("role", "alert");
  main.append(
    element("h1", rescue === null ? "Pennyacre could not start" : "Something went wrong in Pennyacre itself"),
    element(
      "p",
      rescue === null
        ? "No file of yours was changed. Load the page again; if this comes back, report it with the details below."
        : "It is not a fault of your entries. Save the workbook first, then load the page again and open what you saved; if this " +
            "comes back, report it with the details below.",
    ),
  );
  if (rescue !== null) {
    const button = element("button", `Save ${rescue.name}`);
    button.addEventListener("click", rescue.save);
    main.append(button);
  }
  main.append(element("pre", detailsOf(fault)));
  place.replaceChildren(main);
}

/** Sends somebody who opened the page of a server from a disk to the desk as one file, which lies beside it. */
export function showFromDisk(place: HTMLElement): void {
  const main = document.createElement("main");
  main.className = "starting";
  const link = document.createElement("a");
  link.href = "pennyacre-desk.html";
  link.textContent = "Open pennyacre-desk.html";
  const instead = element("p", "");
  instead.append(link, ", the same desk as one file, which works from a disk and without a connection.");
  main.append(element("h1", "Pennyacre"), element("p", "This page works on a web server only, and was opened from a disk."), instead);
  place.replaceChildren(main);
}

/** The fault's message and where it happened. */
export const detailsOf = (fault: unknown): string =>
  fault instanceof Error ? `${fault.name}: ${fault.message}\n${fault.stack ?? ""}` : String(fault);

function element(tag: string, text: string): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
}
