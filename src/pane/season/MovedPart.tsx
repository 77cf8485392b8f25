import type { CropFigures } from "../../core/figures";
import { layerCosts, type Layer } from "../../core/kinds";
import { Disclosure } from "../parts/Disclosure";
import { EntryLinks } from "../parts/EntryLinks";
import { usePane } from "../paneContext";
import type { EntryTeller } from "../parts/entryView";
import { movedView, type MovedLine } from "./movedView";

export type MovedPartProps = { readonly crop: CropFigures; readonly layer: Layer; readonly teller: EntryTeller };

/** What moved the net return since the plan, largest first, down to the entries; nothing where nothing moved. */
export function MovedPart({ crop, layer, teller }: MovedPartProps) {
  const { format } = usePane();
  const view = movedView(crop, layer, format);
  if (view === null) return null;
  return (
    <div className="pn-moved">
      <p className="pn-ends">
        <span>
          What moved net after {layerCosts[layer]}, {format.currency}/{format.areaUnit}
        </span>
        <strong className="pn-number">{view.total}</strong>
      </p>
      <ul className="pn-tree">
        {view.lines.map((line) => (
          <Moved key={line.words} line={line} teller={teller} />
        ))}
        {view.rest !== null && (
          <li>
            {view.rest.lines.length === 0 ? (
              <p className="pn-ends">
                <span>{view.rest.words}</span>
                <span className="pn-number">{view.rest.amount}</span>
              </p>
            ) : (
              <Disclosure look="line" label={view.rest.words} aside={view.rest.amount}>
                <ul className="pn-tree">
                  {view.rest.lines.map((line) => (
                    <Moved key={line.words} line={line} teller={teller} />
                  ))}
                </ul>
              </Disclosure>
            )}
          </li>
        )}
      </ul>
    </div>
  );
}

/** One reason; what it costs opens to the entries, what the yield does is told in the field's own page. */
function Moved({ line, teller }: { readonly line: MovedLine; readonly teller: EntryTeller }) {
  return (
    <li>
      <Disclosure
        look="line"
        label={line.words}
        aside={<span className={line.isLoss ? "pn-cost-text" : "pn-gain-text"}>{line.amount}</span>}
      >
        <MovedEntries line={line} teller={teller} />
      </Disclosure>
    </li>
  );
}

/** Apart from the line, so that its entries are asked for once it is opened. */
function MovedEntries({ line, teller }: { readonly line: MovedLine; readonly teller: EntryTeller }) {
  const { open } = usePane();
  return line.entries.length > 0 ? (
    <EntryLinks entries={line.entries} teller={teller} />
  ) : (
    <button type="button" className="pn-link" onClick={() => open("fields")}>
      It differs field by field: see Fields
    </button>
  );
}
