import { Field, Select } from "@fluentui/react-components";
import { useState } from "react";
import { usePane } from "../paneContext";
import { Button } from "../parts/Button";
import { NameBox } from "./NameBox";
import { allOnBasis, firstWide, isMoney, onBasis, wideChoices, wideMatchView } from "./wideMatchView";

type WideHeadingsProps = {
  readonly address: string;
  readonly headings: readonly string[];
  readonly keep: (rows: readonly ReadonlyMap<string, string>[]) => void;
};

const kindOf = (said: string): string => (said.split(",")[0] ?? said).trim();

/** Says of each heading of a wide sheet which kind of cost it holds, and whether an acre's or the whole field's. */
export function WideHeadings({ address, headings, keep }: WideHeadingsProps) {
  const { format } = usePane();
  const [matching, setMatching] = useState(() => firstWide(headings));
  const { missing, leftOut, rows } = wideMatchView(address, matching);
  const say = (heading: string, said: string) => setMatching({ ...matching, said: new Map([...matching.said, [heading, said]]) });
  return (
    <>
      <p>
        <strong>{address}</strong>: what does each column hold?
      </p>
      <NameBox
        label="The field or crop stands in"
        isAll
        headings={headings}
        value={matching.named}
        say={(named) => setMatching({ ...matching, named })}
      />
      <div>
        <Button onClick={() => setMatching({ ...matching, said: allOnBasis(matching.said, true) })}>
          All money is for the whole field
        </Button>
      </div>
      {headings
        .filter((heading) => heading !== matching.named)
        .map((heading) => {
          const said = matching.said.get(heading) ?? "";
          return (
            <div key={heading} className="pn-pair">
              <Field label={heading}>
                <Select value={kindOf(said)} onChange={(_, { value }) => say(heading, onBasis(value, said.endsWith("whole")))}>
                  {wideChoices.map((value) => (
                    <option key={value} value={value}>
                      {value === "Note" ? "a note" : format.words(value)}
                    </option>
                  ))}
                </Select>
              </Field>
              {isMoney(said) && (
                <Field label={`${heading} is`}>
                  <Select
                    value={said.endsWith("whole") ? "whole" : "per acre"}
                    onChange={(_, { value }) => say(heading, onBasis(said, value === "whole"))}
                  >
                    <option value="per acre">for an acre</option>
                    <option value="whole">for the whole field</option>
                  </Select>
                </Field>
              )}
            </div>
          );
        })}
      {leftOut !== "" && <p>Left out: {leftOut}.</p>}
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
