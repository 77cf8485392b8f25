import { useId } from "react";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Disclosure } from "../parts/Disclosure";
import { Folds } from "../parts/Folds";
import { EntryLinks } from "../parts/EntryLinks";
import { Incomplete } from "../parts/Incomplete";
import { usePane } from "../paneContext";
import type { EntryTeller } from "../parts/entryView";
import { itemsView, type ItemView } from "./itemsView";

export type ItemsCardProps = { readonly report: SeasonReport; readonly teller: EntryTeller };

/**
 * What is still to buy and what it will cost, a line each, then what is bought in full and what was paid above plan; a line opens
 * to its figures.
 */
export function ItemsCard({ report, teller }: ItemsCardProps) {
  const { format } = usePane();
  const heading = useId();
  const { summary, cost, items } = itemsView(report.figures.items, format);
  if (items.length === 0) return null;
  const [short, rest, dear] = [
    items.filter(({ isShort }) => isShort),
    items.filter(({ isShort }) => !isShort),
    items.filter(({ isDear }) => isDear),
  ];
  const list = (of: readonly ItemView[]) => (
    <ul className="pn-items">
      {of.map((item) => (
        <Item key={item.item} item={item} report={report} teller={teller} />
      ))}
    </ul>
  );
  return (
    <section className="pn-card" aria-labelledby={heading}>
      <header>
        <h3 id={heading}>To buy</h3>
        <strong className="pn-number pn-since">{cost}</strong>
      </header>
      {short.length === 0 ? <p>{summary}</p> : list(short)}
      <Folds
        folds={[
          ...(rest.length === 0 ? [] : [{ name: `${rest.length} bought in full`, content: () => list(rest) }]),
          ...(dear.length === 0 ? [] : [{ name: `${dear.length} paid a tenth or more above plan`, content: () => list(dear) }]),
        ]}
      />
    </section>
  );
}

const columns = [
  ["bought", "bought"],
  ["used", "used"],
  ["needed", "needed"],
  ["short", "short"],
  ["left", "left"],
] as const;

function Item({ item, report, teller }: { readonly item: ItemView } & ItemsCardProps) {
  const subject = { of: "item", name: item.item } as const;
  return (
    <li className="pn-item">
      <Disclosure
        look="line"
        label={
          <>
            <strong>{item.item}</strong>
            {item.isShort && (
              <span className="pn-note">
                {" "}
                {item.short} {item.unit} short
              </span>
            )}
            <span className="pn-bought" aria-hidden="true">
              <i style={{ width: `${item.boughtPart}%` }} />
            </span>
          </>
        }
        aside={item.isShort ? item.cost : item.left === "0" ? "" : `${item.left} ${item.unit} left`}
      >
        <p className="pn-note">
          {item.price}
          {item.paid !== "" && (
            <>
              ; <span className={item.isDear ? "pn-cost-text" : ""}>{item.paid}</span>
            </>
          )}
        </p>
        <dl className="pn-five">
          {columns.map(([of, name]) => (
            <div key={of}>
              <dt>{name}</dt>
              <dd className="pn-number">{item[of]}</dd>
            </div>
          ))}
        </dl>
        {item.shortCost !== "" && (
          <p className="pn-short-cost">
            {item.short} {item.shortCost}
          </p>
        )}
        <EntryLinks entries={item.entries} teller={teller} />
      </Disclosure>
      <Incomplete of={subject} problems={report.problemsOf(subject).length} />
    </li>
  );
}
