import { useId } from "react";
import type { SeasonReport } from "../../workbook/seasonReport";
import { Disclosure } from "../parts/Disclosure";
import { EntryLinks } from "../parts/EntryLinks";
import { Incomplete } from "../parts/Incomplete";
import { usePane } from "../paneContext";
import type { EntryTeller } from "./entryView";
import { itemsView, type ItemView } from "./itemsView";

export type ItemsCardProps = { readonly report: SeasonReport; readonly teller: EntryTeller };

/** What is still to buy, then every other item: bought, used, still needed, short and left over. */
export function ItemsCard({ report, teller }: ItemsCardProps) {
  const { format } = usePane();
  const heading = useId();
  const { summary, items } = itemsView(report.figures.items, format);
  if (items.length === 0) return null;
  const [short, rest] = [items.filter(({ isShort }) => isShort), items.filter(({ isShort }) => !isShort)];
  return (
    <section className="pn-card" aria-labelledby={heading}>
      <header><h3 id={heading}>To buy</h3></header>
      <p>{summary}</p>
      <Items items={short} report={report} teller={teller} />
      {rest.length > 0 && (
        <Disclosure look="line" label={`${rest.length} ${short.length === 0 ? (rest.length === 1 ? "item" : "items") : "more"}, bought as needed`}>
          <Items items={rest} report={report} teller={teller} />
        </Disclosure>
      )}
    </section>
  );
}

const Items = ({ items, report, teller }: ItemsCardProps & { readonly items: readonly ItemView[] }) => (
  <ul className="pn-items">{items.map((item) => <Item key={item.item} item={item} report={report} teller={teller} />)}</ul>
);

const columns = [["bought", "bought"], ["used", "used"], ["needed", "needed"], ["short", "short"], ["left", "left"]] as const;

function Item({ item, report, teller }: { readonly item: ItemView } & ItemsCardProps) {
  const subject = { of: "item", name: item.item } as const;
  return (
    <li className={item.isShort ? "pn-item pn-short" : "pn-item"}>
      <Disclosure look="line" label={<><strong>{item.item}</strong> <span className="pn-note">{item.price}</span></>}>
        <EntryLinks entries={item.entries} teller={teller} />
      </Disclosure>
      <dl className="pn-five">
        {columns.map(([of, name]) => <div key={of}><dt>{name}</dt><dd className="pn-number">{item[of]}</dd></div>)}
      </dl>
      {item.shortCost !== "" && <p className="pn-short-cost">{item.short} {item.shortCost}</p>}
      <Incomplete of={subject} problems={report.problemsOf(subject).length} />
    </li>
  );
}
