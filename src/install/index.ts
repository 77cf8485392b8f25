/** What the install page does: it writes the manifest for its own address, and says what about the server would be in Excel's way. */
import manifest from "../../manifest.xml";
import { folderOf, manifestFor, serverFaults } from "./manifestFor";
import { exampleFolder } from "./ways";

function part<Element extends HTMLElement>(id: string): Element {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`The page has no part ${id}.`);
  return found as Element;
}
const where = part("where");
const save = part<HTMLButtonElement>("save");
const saved = part("saved");
const faults = part<HTMLUListElement>("faults");

function tell(sentences: readonly string[]): void {
  faults.replaceChildren(
    ...sentences.map((sentence) => {
      const item = document.createElement("li");
      item.textContent = sentence;
      return item;
    }),
  );
  faults.hidden = sentences.length === 0;
}

/** Hands the manifest to the browser's downloads. */
function saveManifest(folder: string): void {
  const address = URL.createObjectURL(new Blob([manifestFor(manifest, folder)], { type: "text/xml" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = "manifest.xml";
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
  saved.hidden = false;
}

async function look(folder: string): Promise<void> {
  const [pane, icon] = await Promise.all(
    ["pane.html", "icons/icon-32.png"].map((file) => fetch(`${folder}/${file}`, { cache: "no-store" })),
  );
  tell(serverFaults({ pane: pane!, icon: icon! }));
}

const folder = folderOf(location.href);
if (folder.ok) {
  where.textContent = `Excel will load Pennyacre from ${folder.value}/pane.html.`;
  for (const code of document.querySelectorAll("[data-place]")) code.textContent = code.textContent.replace(exampleFolder, folder.value);
  save.hidden = false;
  save.addEventListener("click", () => saveManifest(folder.value));
  look(folder.value).catch((fault: unknown) =>
    tell([`The server could not be looked at: ${fault instanceof Error ? fault.message : String(fault)}`]),
  );
} else {
  where.textContent = folder.problems.join(" ");
}
