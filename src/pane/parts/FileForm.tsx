import { Field, Select, Textarea } from "@fluentui/react-components";
import { useState, type ReactNode } from "react";
import { addEntries, lostWords } from "../commands/addEntries";
import type { EntryRow } from "../commands/entryRow";
import { failureWords } from "../failure";
import { usePane } from "../paneContext";
import { Button } from "./Button";
import { ToldLine, type Told } from "./Told";

export type FileFormProps = {
  /** What the form is called to a screen reader. */
  readonly name: string;
  /** Which files it takes, in words and for the browser. */
  readonly files: string;
  readonly accept: string;
  readonly text: string;
  /** What was chosen or pasted. */
  readonly take: (text: string) => void;
  /** `rows` is `null` as long as nothing can be added; `says` is what was understood. */
  readonly view: { readonly rows: readonly EntryRow[] | null; readonly says: readonly string[]; readonly fault: string | null };
  /** One of our tables. */
  readonly table: string;
  /** How one row is said, and what many are: "One spot", "spots". */
  readonly things: readonly [one: string, many: string];
  /** What else is asked. */
  readonly children: ReactNode;
};

/** Rows from a file, chosen or pasted: they become entries of a table in one step. */
export function FileForm({ name, files, accept, text, take, view, table, things: [one, many], children }: FileFormProps) {
  const { host, watch, fault } = usePane();
  const [isAdding, setAdding] = useState(false);
  const [told, setTold] = useState<Told>(null);
  const change = (given: string) => {
    setTold(null);
    take(given);
  };
  const open = async (file: File | undefined) => {
    if (file !== undefined) change(await file.text());
  };
  const add = async () => {
    const content = watch.state().reading?.content;
    if (view.rows === null || content === undefined) return;
    setAdding(true);
    const added = await addEntries(host, content, table, view.rows);
    if (added.ok) await watch.refresh();
    setAdding(false);
    if (!added.ok) return setTold({ tone: "failed", text: failureWords(added.failure, `The ${many} were not added.`) });
    take("");
    const count = view.rows.length;
    setTold({ tone: "done", text: `${count === 1 ? `${one} was` : `${count} ${many} were`} added.${lostWords(added.value)}` });
  };
  return (
    <form
      className="pn-form"
      aria-label={name}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (!isAdding) add().catch(fault);
      }}
    >
      <label className="pn-file">
        {files}
        <input type="file" accept={accept} onChange={({ target }) => void open(target.files?.[0]).catch(fault)} />
      </label>
      <Field label="Or its lines, headings and all">
        <Textarea rows={4} value={text} onChange={(_, { value }) => change(value)} />
      </Field>
      {children}
      <output className="pn-says">
        {view.says.map((words) => (
          <span key={words} className="pn-line">
            {words}
          </span>
        ))}
      </output>
      {view.fault !== null && <p className="pn-fault">{view.fault}</p>}
      <Button type="submit" appearance="primary" disabledFocusable={isAdding || view.rows === null}>
        {isAdding ? "Adding …" : `Add the ${many}`}
      </Button>
      <ToldLine told={told} />
    </form>
  );
}

export type UnitOfFileProps<Unit extends string> = {
  readonly label: string;
  readonly units: readonly Unit[];
  readonly words: Readonly<Record<Unit, string>>;
  readonly chosen: Unit | null;
  readonly choose: (unit: Unit | null) => void;
};

/** Asks for the units of a file whose headings do not say them; none is chosen before. */
export function UnitOfFile<Unit extends string>({ label, units, words, chosen, choose }: UnitOfFileProps<Unit>) {
  const { format } = usePane();
  return (
    <Field label={label}>
      <Select value={chosen ?? ""} onChange={(_, { value }) => choose(units.find((each) => each === value) ?? null)}>
        <option value="">choose</option>
        {units.map((unit) => (
          <option key={unit} value={unit}>
            {format.words(words[unit])}
          </option>
        ))}
      </Select>
    </Field>
  );
}
