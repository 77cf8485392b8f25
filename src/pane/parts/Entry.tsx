import { Field, Input } from "@fluentui/react-components";
import { neededLabel } from "./neededLabel";

export type EntryProps = {
  readonly label: string;
  readonly value: string;
  readonly change: (value: string) => void;
  readonly fault?: string | undefined;
  readonly hint?: string | undefined;
  readonly required?: boolean;
  readonly type?: "date";
  readonly numeric?: boolean;
};

/** One labelled box to type in, with what is wrong with it said at the box itself. */
export const Entry = ({ label, value, change, fault, hint, required = false, type, numeric = false }: EntryProps) => (
  <Field
    label={neededLabel(label, required)}
    required={required}
    {...(fault !== undefined && { validationMessage: fault })}
    {...(hint !== undefined && { hint })}
  >
    <Input
      type={type ?? "text"}
      inputMode={numeric ? "decimal" : undefined}
      autoComplete="off"
      value={value}
      onChange={(_, data) => change(data.value)}
    />
  </Field>
);
