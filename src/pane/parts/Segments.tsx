import { useId } from "react";

export type SegmentsProps<Value extends string> = {
  readonly legend: string;
  readonly choices: readonly { readonly value: Value; readonly name: string }[];
  readonly chosen: Value;
  readonly choose: (value: Value) => void;
};

/** One of a few, side by side: radio buttons, so that the arrow keys and every screen reader know them. */
export function Segments<Value extends string>({ legend, choices, chosen, choose }: SegmentsProps<Value>) {
  const name = useId();
  return (
    <fieldset className="pn-segments">
      <legend>{legend}</legend>
      <div>
        {choices.map((choice) => (
          <label key={choice.value}>
            <input type="radio" name={name} value={choice.value} checked={choice.value === chosen} onChange={() => choose(choice.value)} />
            <span>{choice.name}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
