/** `help.html`, whole: it needs no script, and nothing from anywhere but the build. */
import { spelled } from "../../workbook/spelling";
import { helpParts } from "./helpParts";
import { helpStyle } from "./helpStyle";
import { putInto, type HelpBlock, type HelpPart } from "./part";

/** The page belongs to no season, so it is spelled as in the country that most readers farm in; the tables read both spellings. */
const parts = helpParts.map((part) => putInto(part, (words) => spelled(words, "USD")));

const safe = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

function blockHtml(block: HelpBlock): string {
  if (block.is === "words") return `<p>${safe(block.text)}</p>`;
  if (block.is === "list") return `<ul>${block.items.map((item) => `<li>${safe(item)}</li>`).join("")}</ul>`;
  return `<dl>${block.terms.map(([term, meaning]) => `<div><dt>${safe(term)}</dt><dd>${safe(meaning)}</dd></div>`).join("")}</dl>`;
}

const partHtml = ({ id, title, blocks, parts = [] }: HelpPart, level: 2 | 3 = 2): string =>
  [
    `<section id="${id}"><h${level}>${safe(title)}</h${level}>`,
    ...blocks.map(blockHtml),
    ...(parts.length === 0 ? [] : [`<p class="jump">${parts.map(link).join(", ")}.</p>`]),
    ...parts.map((part) => partHtml(part, 3)),
    "</section>",
  ].join("\n");

const link = ({ id, title }: HelpPart): string => `<a href="#${id}">${safe(title)}</a>`;

export const helpHtml = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src 'self'; base-uri 'none'; form-action 'none'">
<title>Pennyacre: help</title>
<link rel="icon" href="icons/coin.svg" type="image/svg+xml">
<style>${helpStyle}</style>
</head>
<body>
<header><img src="icons/coin.svg" alt="" width="36" height="36"><h1>Pennyacre: help</h1></header>
<main>
<p>What an acre costs now, what price and what yield pay for it, and whether a change pays, from the entries in your own workbook.</p>
<nav aria-label="Contents"><ul>${parts.map((part) => `<li>${link(part)}</li>`).join("")}</ul></nav>
${parts.map((part) => partHtml(part)).join("\n")}
</main>
<footer><p><a href="index.html">Open the desk</a> · <a href="install.html">Put Pennyacre into Excel</a> · <a href="third-party-notices.txt">Licenses of what others wrote</a></p></footer>
</body>
</html>
`;

/** For the build, which takes a page from what its module gives by default. */
export default helpHtml;
