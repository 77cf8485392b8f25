/** `install.html`: how Pennyacre gets into Excel, with the manifest for the address where the page lies. */
import { helpStyle } from "../pane/help/helpStyle";
import { version } from "../pane/version";
import { buttons, exampleFolder, ways, type Way } from "./ways";

const safe = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
/** The words of a step, its names of buttons strong and what is typed as code. */
const wordsHtml = (text: string): string =>
  safe(text)
    .replace(/\*([^*]+)\*/g, "<strong>$1</strong>")
    .replace(/`([^`]+)`/g, (_, code: string) => `<code${code.startsWith(exampleFolder) ? " data-place" : ""}>${code}</code>`);

const wayHtml = ({ id, title, steps, notes }: Way): string =>
  [
    `<section id="${id}"><h2>${safe(title)}</h2>`,
    ...(steps.length === 0 ? [] : [`<ol>${steps.map((step) => `<li>${wordsHtml(step)}</li>`).join("")}</ol>`]),
    `<ul>${notes.map((note) => `<li>${wordsHtml(note)}</li>`).join("")}</ul>`,
    "</section>",
  ].join("\n");

const seen = `<section id="ribbon"><h2>What you then see</h2>
<p>The group <strong>Pennyacre</strong> on the <strong>Home</strong> tab has four buttons. All open one pane, each at its page:</p>
<ul class="buttons">${buttons
  .map(
    ({ label, picture, opens }) =>
      `<li><img src="icons/${picture}-32.png" alt="" width="32" height="32"><span><strong>${label}</strong>: ${opens}.</span></li>`,
  )
  .join("")}</ul></section>`;

/** What the page has, in the order of its list of contents. */
const contents = [...ways, { id: "ribbon", title: "What you then see" }, { id: "without", title: "Without Excel" }];

const style = `${helpStyle}
ol { padding-inline-start: 1.5rem; }
li + li { margin-top: 0.5rem; }
code { font-family: ui-monospace, Consolas, monospace; font-size: 0.95em; }
button, .button { min-height: 44px; padding: 0 1.25rem; font: inherit; font-weight: 600; color: var(--paper); background: var(--copper); border: 2px solid var(--copper); border-radius: 4px; }
button:focus-visible { outline: 3px solid var(--link); outline-offset: 2px; }
.buttons { padding: 0; list-style: none; }
.buttons li { display: flex; align-items: center; gap: 0.75rem; }
.place { padding: 1rem; border: 1px solid var(--line); }
.faults { border-inline-start: 4px solid var(--copper); padding-inline-start: 1rem; }
[hidden] { display: none; }
`;

const installHtml = `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'; connect-src 'self'; style-src 'unsafe-inline'; img-src 'self'; base-uri 'none'; form-action 'none'">
<title>Pennyacre: put it into Excel</title>
<link rel="icon" href="icons/coin.svg" type="image/svg+xml">
<style>${style}</style>
</head>
<body>
<header><img src="icons/coin.svg" alt="" width="36" height="36"><h1>Put Pennyacre into Excel</h1></header>
<main>
<p>Pennyacre ${version} is a pane beside your workbook. It runs in Excel 2021 or later, Microsoft 365, and Excel on the web. Excel needs one small file, manifest.xml, that says where Pennyacre lies; this page writes it.</p>
<section class="place" aria-label="Your manifest">
<p id="where" role="status">Looking where this page lies … If this stays, allow JavaScript for this page.</p>
<p><button id="save" type="button" hidden>Save manifest.xml</button></p>
<p id="saved" role="status" hidden>manifest.xml went to your browser's downloads. Go on with step 2 of your Excel below.</p>
<ul id="faults" class="faults" hidden></ul>
</section>
<nav aria-label="Contents"><ul>${contents.map(({ id, title }) => `<li><a href="#${id}">${safe(title)}</a></li>`).join("")}</ul></nav>
${ways.map(wayHtml).join("\n")}
${seen}
<section id="without"><h2>Without Excel</h2>
<p>The <a href="index.html">desk</a> is the same pane beside your tables in a browser, and opens and saves ordinary .xlsx files. As one file for your own disk, which works without a connection: <a href="pennyacre-desk.html" download>pennyacre-desk.html</a>. Save it, then open it with a double click.</p>
</section>
</main>
<footer><p><a href="help.html">Help</a></p></footer>
</body>
</html>
`;

/** For the build, which takes a page from what its module gives by default. */
export default installHtml;
