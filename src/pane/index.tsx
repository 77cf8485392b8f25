/** The pane's page in Excel: the one place that brings the pane and the Excel host together. */
import { createRoot } from "react-dom/client";
import { startInExcel, type Started } from "../host/excel/start";
import { Pane } from "./Pane";

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

function show(started: Started): void {
  if (!started.ok) return root.render(<Stopped message={started.message} />);
  const { host, look, language } = started;
  root.render(<Pane host={host} language={language} {...(look !== null && { theme: look.dark ? "dark" : "light" })} />);
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
