/** The pane's page in Excel: the one place that brings the pane and the Excel host together. */
import { createRoot } from "react-dom/client";
import { startInExcel, type Started } from "../host/excel/start";
import type { NextSeason } from "../workbook/next/nextSeason";
import { HostError } from "../host/workbookHost";
import { keptInSession } from "./kept";
import { pageAsked } from "./page";
import { Pane } from "./Pane";
import { version } from "./version";

const element = document.getElementById("pane");
if (element === null) throw new Error("The page has no element to start in.");
const root = createRoot(element);

/** Why the pane cannot run here, in plain words and without any library's looks. */
const Stopped = ({ message }: { readonly message: string }) => (
  <div className="starting" role="alert">
    <h1>Pennyacre</h1>
    <p>{message}</p>
  </div>
);

/** Opens the demo season, which lies beside the page, as a workbook of its own. */
async function demoOpened(openWorkbook: (bytes: Uint8Array) => Promise<void>): Promise<string> {
  const notThere = (why: string) => new HostError("failed", `The demo season did not arrive from where the pane came from (${why}).`);
  let bytes: ArrayBuffer;
  try {
    const answer = await fetch("demo-season.xlsx");
    if (!answer.ok) throw notThere(`answer ${answer.status}`);
    bytes = await answer.arrayBuffer();
  } catch (error) {
    // What `fetch` throws where nothing comes.
    throw error instanceof TypeError ? notThere(error.message) : error;
  }
  await openWorkbook(new Uint8Array(bytes));
  return "The demo season opens as a workbook of its own, and this one stays as it is. There, choose Season costs on the Home tab.";
}

/** Opens the next season as a workbook of its own. What makes its file comes only when it is asked for. */
async function nextOpened(openWorkbook: (bytes: Uint8Array) => Promise<void>, { year, tables, notes }: NextSeason): Promise<string> {
  const { filledWorkbook } = await import("../host/embedded/package/filledWorkbook");
  await openWorkbook(await filledWorkbook(tables, [`Season ${year}`, ...notes]));
  return `Season ${year} opens as a workbook of its own, and this one stays as it is. Save it under a name; what to look at stands on its sheet Notes.`;
}

function show(started: Started): void {
  if (!started.ok) return root.render(<Stopped message={started.message} />);
  const { host, look, language, openWorkbook, workbook } = started;
  const opening = pageAsked(location.search);
  root.render(
    <Pane
      host={host}
      language={language}
      kept={keptInSession(() => sessionStorage, `${version} ${workbook}`)}
      {...(look !== null && { theme: look.dark ? "dark" : "light" })}
      {...(opening !== undefined && { opening })}
      {...(openWorkbook !== null && {
        openDemo: () => demoOpened(openWorkbook),
        openNext: (next: NextSeason) => nextOpened(openWorkbook, next),
      })}
    />,
  );
}

function start(): void {
  startInExcel((message) => {
    root.render(<Stopped message={message} />);
  }).then(show, (fault: unknown) => {
    root.render(
      <Stopped
        message={`Excel could not be reached: ${fault instanceof Error ? fault.message : String(fault)}. Close the pane and open it again.`}
      />,
    );
    throw fault;
  });
}

// src/pane/check.js has said so already, and what it said stays.
if (element.querySelector("[data-too-old]") === null) start();
