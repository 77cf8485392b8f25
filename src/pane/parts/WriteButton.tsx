import { useState } from "react";
import { Button } from "./Button";
import { explain } from "../../workbook/explain";
import type { Problem } from "../../workbook/problem";
import type { ResultSheet } from "../../workbook/resultSheet";
import { spelledSheet } from "../../workbook/spelling";
import { failureWords, outcome } from "../failure";
import { usePane } from "../paneContext";
import { ToldLine, type Told } from "./Told";

export type WriteButtonProps = {
  readonly label: string;
  /** Made when the button is pressed; none where `hold` says why not. */
  readonly sheets: () => readonly ResultSheet[];
  /** Why nothing can be written yet; left out where it can. */
  readonly hold?: string | undefined;
  /** What is said after the names of the sheets. */
  readonly after?: string;
  readonly isMain?: boolean;
  /** Whether the first sheet that was written can be opened by a button beside. */
  readonly opens?: boolean;
};

/** Writes result sheets as one step and says which; a refusal of the workbook is said in words, and the button stays. */
export function WriteButton({ label, sheets, hold, after = "", isMain = false, opens = false }: WriteButtonProps) {
  const { host, watch, fault } = usePane();
  const [isWriting, setWriting] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const [made, setMade] = useState<string | null>(null);
  const show = async (sheet: string) => {
    const shown = await outcome(() => host.select({ sheet, row: 0, column: 0 }));
    if (!shown.ok) setTold({ tone: "failed", text: failureWords(shown.failure, "The sheet was not opened.") });
  };
  const write = async () => {
    const held = hold ?? openRowWords(watch.state().reading?.report.problems ?? []);
    if (held !== undefined) return setTold({ tone: "failed", text: held });
    setWriting(true);
    setTold(null);
    const report = watch.state().reading?.report;
    const toWrite = report === undefined ? [] : sheets().map((sheet) => spelledSheet(sheet, report));
    const written = await outcome(() => host.write(toWrite));
    setWriting(false);
    setMade(written.ok ? (written.value[0] ?? null) : null);
    setTold(
      written.ok
        ? { tone: "done", text: writtenWords(toWrite, written.value, after) }
        : { tone: "failed", text: failureWords(written.failure, "Nothing was written.") },
    );
  };
  return (
    <>
      <p className="pn-buttons">
        <Button
          appearance={isMain ? "primary" : "secondary"}
          disabledFocusable={isWriting}
          onClick={() => {
            if (!isWriting) write().catch(fault);
          }}
        >
          {isWriting ? "Writing …" : label}
        </Button>
        {opens && made !== null && (
          <Button
            onClick={() => {
              show(made).catch(fault);
            }}
          >{`Open “${made}”`}</Button>
        )}
      </p>
      <ToldLine told={told} />
    </>
  );
}

/** Why nothing leaves the screen while an entry is half typed; `undefined` where none is. */
export function openRowWords(problems: readonly Problem[]): string | undefined {
  const open = problems.find(({ code }) => code === "row-open");
  if (open === undefined) return undefined;
  const { what, remedy } = explain(open);
  return `${what} ${remedy} Then write.`;
}

/** What was written, and what became of sheets that were there. */
export function writtenWords(sheets: readonly ResultSheet[], used: readonly string[], after: string): string {
  const names = used.map((name) => `“${name}”`);
  // A name that Excel does not take whole is cut, which needs no word; another number behind it means that the name was taken.
  const taken = sheets.filter(({ name }, index) => / \(\d+\)$/.test(used[index]!) && used[index] !== name).map(({ name }) => `“${name}”`);
  const renamed = taken.length === 0 ? "" : ` The name ${taken.join(" and ")} was taken by a sheet of your own.`;
  const list = names.length === 1 ? names[0]! : `${names.slice(0, -1).join(", ")} and ${names.at(-1)!}`;
  return (
    `${names.length === 1 ? "The sheet" : "The sheets"} ${list} ${names.length === 1 ? "was" : "were"} ` +
    `written${after === "" ? "" : ` ${after}`}. Our earlier ones of the same name were made again; a sheet of your own is never ` +
    `touched.${renamed}`
  );
}
