import { Field, Input, Select, type FieldProps } from "@fluentui/react-components";
import { alwaysWords, cellWords, sheetNameWords } from "../../workbook/matchConstants";
import { cellSaid, isCellChoice } from "./nameChoice";

type NameBoxProps = {
  readonly label: NonNullable<FieldProps["label"]>;
  readonly required?: boolean;
  readonly hint?: string;
  readonly headings: readonly string[];
  /** Whether it can be all fields together. */
  readonly isAll?: boolean;
  /** A heading, the words for the sheet's name or a cell of it; `""` for none. */
  readonly value: string;
  readonly say: (value: string) => void;
};

/**
 * Where the name of a field or crop comes from: a heading of the range, the sheet's name, a cell on the sheet, or no name where
 * it is about all.
 */
export function NameBox({ label, required = false, hint, headings, isAll = false, value, say }: NameBoxProps) {
  const isCell = isCellChoice(value);
  return (
    <div className="pn-pair">
      <Field label={label} required={required} {...(hint !== undefined && { hint })}>
        <Select value={isCell ? cellWords("") : value} onChange={(_, data) => say(data.value)}>
          <option value="">none</option>
          {headings.map((own) => (
            <option key={own} value={own}>
              {own}
            </option>
          ))}
          <option value={sheetNameWords}>the sheet’s name</option>
          <option value={cellWords("")}>a cell on the sheet</option>
          {isAll && <option value={alwaysWords("all")}>all fields, in every row</option>}
        </Select>
      </Field>
      {isCell && (
        <Field label="Which cell, such as B2">
          <Input value={cellSaid(value)} onChange={(_, data) => say(cellWords(data.value.trim().toUpperCase()))} />
        </Field>
      )}
    </div>
  );
}
