import { Checkbox } from "@fluentui/react-components";
import { sheetOf, withSheet } from "./sheetsToo";

type AlikeSheetsProps = {
  /** Addresses of the same cells on the other sheets. */
  readonly alike: readonly string[];
  readonly read: ReadonlySet<string>;
  readonly say: (read: ReadonlySet<string>) => void;
};

/** The other sheets of this layout, each with a box to read it or not. */
export function AlikeSheets({ alike, read, say }: AlikeSheetsProps) {
  return (
    <div role="group" aria-label="Sheets of this layout">
      <p>{alike.length === 1 ? "Another sheet has" : `${alike.length} other sheets have`} this layout. Read too:</p>
      {alike.map((address) => (
        <div key={address}>
          <Checkbox
            label={sheetOf(address)}
            checked={read.has(address)}
            onChange={(_, { checked }) => say(withSheet(read, address, checked === true))}
          />
        </div>
      ))}
    </div>
  );
}
