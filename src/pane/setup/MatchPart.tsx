import { Field, Select } from "@fluentui/react-components";
import { useState } from "react";
import { Button } from "../parts/Button";
import type { InputTable } from "../../workbook/inputTable";
import { inputTables } from "../../workbook/templates";
import { keepMatch } from "../commands/keepMatch";
import { sameName } from "../commands/tableNamed";
import { outcome } from "../failure";
import { failureNotice, usePane } from "../paneContext";
import { neededLabel } from "../parts/neededLabel";
import { alwaysWords } from "../../workbook/matchConstants";
import { AlikeSheets } from "./AlikeSheets";
import { readToo } from "./sheetsToo";
import { NameBox } from "./NameBox";
import { forEach, namingColumns } from "./nameChoice";
import { firstMatching, matchView, type Matching } from "./matchView";
import { headingsOnce } from "./wideMatchView";
import { WideHeadings } from "./WideHeadings";
import { nearHeadings, proposalWords } from "./nearHeadings";

const matchable = inputTables.filter(({ name }) => !sameName(name, "Matches"));

/** Not a table: costs with a column for each kind, which become lines of the Budget. */
const wide = "wide";

type Selected = {
  readonly address: string;
  readonly headings: readonly string[];
  /** The same cells of other sheets of this layout. */
  readonly alike: readonly string[];
};

/** Points a table of ours at a range of the grower's own: choose the table, select the range, match the headings. */
export function MatchPart() {
  const { host, watch, tell, fault } = usePane();
  const [table, setTable] = useState<InputTable>(matchable[0]!);
  const [isWide, setWide] = useState(false);
  const [also, setAlso] = useState<ReadonlySet<string>>(new Set());
  const [selected, setSelected] = useState<Selected | null>(null);
  const [matching, setMatching] = useState<Matching>(new Map());

  const take = async () => {
    const found = await outcome(() => host.selection());
    if (!found.ok) return tell(failureNotice(found.failure, () => void take().catch(fault)));
    const headings = headingsOnce(found.value.headings.map((heading) => heading.trim()));
    const alike = await outcome(() => host.alike(found.value.address));
    if (!alike.ok) return tell(failureNotice(alike.failure, () => void take().catch(fault)));
    setSelected({ address: found.value.address, headings, alike: alike.value });
    setAlso(readToo(found.value.address, alike.value));
    setMatching(firstMatching(table, headings));
    tell(null);
  };
  const addresses = selected === null ? [] : [selected.address, ...selected.alike.filter((each) => also.has(each))];
  const keep = async (rows: readonly ReadonlyMap<string, string>[]) => {
    const content = watch.state().reading?.content;
    if (content === undefined) return;
    const kept = await keepMatch(host, content, forEach(addresses, rows));
    if (!kept.ok) return tell(failureNotice(kept.failure, () => void keep(rows).catch(fault)));
    tell({
      tone: "done",
      text:
        `${isWide ? "Budget" : table.sheet} is now read from ` +
        `${addresses.length > 1 ? `${addresses.length} sheets` : (selected?.address ?? "your range")}. The match is kept in the table ` +
        "Matches.",
    });
    setSelected(null);
    await watch.refresh();
  };

  return (
    <div className="pn-form">
      <Field label="Read this table">
        <Select
          value={isWide ? wide : table.name}
          onChange={(_, { value }) => {
            setWide(value === wide);
            setTable(matchable.find(({ name }) => name === value) ?? table);
            setSelected(null);
          }}
        >
          {matchable.map(({ name, sheet }) => (
            <option key={name} value={name}>
              {sheet}
            </option>
          ))}
          <option value={wide}>Costs, a column for each kind</option>
        </Select>
      </Field>
      <p>Select your range in the workbook, or one cell of it on the desk, and press the button.</p>
      <Button onClick={() => void take().catch(fault)}>Use the selected range</Button>
      {selected !== null && selected.alike.length > 0 && <AlikeSheets alike={selected.alike} read={also} say={setAlso} />}
      {selected !== null && isWide && (
        <WideHeadings
          key={selected.address}
          address={selected.address}
          headings={selected.headings}
          keep={(rows) => void keep(rows).catch(fault)}
        />
      )}
      {selected !== null && !isWide && (
        <Headings
          table={table}
          selected={selected}
          matching={matching}
          match={(more) => setMatching(new Map([...matching, ...more]))}
          keep={(rows) => void keep(rows).catch(fault)}
        />
      )}
    </div>
  );
}

type HeadingsProps = {
  readonly table: InputTable;
  readonly selected: Selected;
  readonly matching: Matching;
  readonly match: (more: Matching) => void;
  readonly keep: (rows: readonly ReadonlyMap<string, string>[]) => void;
};

function Headings({ table, selected: { address, headings }, matching, match, keep }: HeadingsProps) {
  const { format } = usePane();
  const { missing, rows } = matchView(table, address, matching);
  const near = nearHeadings(table, headings, matching);
  if (headings.length === 0)
    return <p className="pn-fault">The first row of {address} has no headings. Select the range with its headings.</p>;
  return (
    <>
      <p>
        <strong>{address}</strong>: which of your headings stands for which column?
      </p>
      {near.size > 0 && (
        <>
          <p>These may mean the same: {proposalWords(near)}.</p>
          <Button onClick={() => match(near)}>Use {near.size === 1 ? "it" : "these"}</Button>
        </>
      )}
      {table.columns.map(({ heading, required, hint, choices = [] }) =>
        namingColumns.has(heading) ? (
          <NameBox
            key={heading}
            label={neededLabel(format.words(heading), required)}
            required={required}
            hint={format.words(hint)}
            headings={headings}
            isAll={heading === "For"}
            value={matching.get(heading) ?? ""}
            say={(value) => match(new Map([[heading, value]]))}
          />
        ) : (
          <Field key={heading} label={neededLabel(format.words(heading), required)} required={required} hint={format.words(hint)}>
            <Select value={matching.get(heading) ?? ""} onChange={(_, { value }) => match(new Map([[heading, value]]))}>
              <option value="">none</option>
              {headings.map((own) => (
                <option key={own} value={own}>
                  {own}
                </option>
              ))}
              {choices.length > 0 && (
                <optgroup label="The same in every row">
                  {choices.map((word) => (
                    <option key={word} value={alwaysWords(word)}>
                      {format.words(word)}
                    </option>
                  ))}
                </optgroup>
              )}
            </Select>
          </Field>
        ),
      )}
      {missing !== "" && <p className="pn-fault">{missing}</p>}
      <Button
        appearance="primary"
        disabledFocusable={missing !== ""}
        onClick={() => {
          if (missing === "") keep(rows);
        }}
      >
        Keep this match
      </Button>
    </>
  );
}
