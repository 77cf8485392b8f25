import { carriedFile } from "./carried";

/**
 * Shows the help that the page carries, where its address asks for that (`#help`, or a part of the help by name). Answers whether it
 * did; a page that carries none, or that was asked for nothing, shows the desk.
 */
export function showCarriedHelp(hash: string): boolean {
  const asked = hash.slice(1);
  if (asked === "") return false;
  const bytes = carriedFile("help.html");
  if (bytes === null) return false;
  const help = new DOMParser().parseFromString(new TextDecoder().decode(bytes), "text/html");
  addNotices(help, asked === noticesId);
  if (asked !== "help" && help.getElementById(asked) === null) return false;
  const icon = document.querySelector<HTMLLinkElement>("link[rel=icon]");
  for (const image of help.images) image.src = icon?.href ?? "";
  // It leads to pages that would lie beside this one; the notices are in it.
  help.querySelector("footer")?.remove();
  for (const style of document.querySelectorAll("style")) style.remove();
  document.title = help.title;
  document.head.append(...help.querySelectorAll("style"));
  document.body.replaceChildren(...help.body.children);
  scrollTo(0, document.getElementById(asked)?.offsetTop ?? 0);
  return true;
}

const noticesId = "third-party-notices";

/** What of others is in the page, with its licences, at the end of the help: closed, so that it is not printed with it. */
function addNotices(help: Document, isOpen: boolean): void {
  const bytes = carriedFile(`${noticesId}.txt`);
  if (bytes === null) return;
  const [notices, title, text] = [help.createElement("details"), help.createElement("summary"), help.createElement("pre")];
  notices.id = noticesId;
  notices.toggleAttribute("open", isOpen);
  title.textContent = "What others wrote of this page, and under which licenses";
  text.textContent = new TextDecoder().decode(bytes);
  text.style.whiteSpace = "pre-wrap";
  notices.append(title, text);
  help.querySelector("main")?.append(notices);
}
