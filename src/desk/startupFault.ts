/** What is shown when the page cannot start. No library is used here, because one of them may be what failed. */

/** Replaces the page by the fault in words, with the details to copy into a report. */
export function showStartupFault(root: HTMLElement, fault: unknown): void {
  const main = document.createElement("main");
  main.className = "starting";
  main.append(
    element("h1", "Pennyacre could not start"),
    element("p", "Something went wrong before a workbook was opened; no file of yours was changed. Load the page again. If this comes back, report it with the details below."),
    element("pre", detailsOf(fault)),
  );
  main.setAttribute("role", "alert");
  root.replaceChildren(main);
}

const detailsOf = (fault: unknown): string =>
  fault instanceof Error ? `${fault.name}: ${fault.message}\n${fault.stack ?? ""}` : String(fault);

function element(tag: string, text: string): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
}
