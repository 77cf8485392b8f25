import { useEffect, useRef, type KeyboardEvent } from "react";
import { scrolledTo } from "./scrolledTo";
import { entriesIn, type View } from "./views";

export type RailProps = {
  readonly views: readonly View[];
  readonly shown: View;
  readonly show: (view: string, focusGrid: boolean) => void;
};

/**
 * The tables of the season grouped as the work goes, then the grower's own sheets and the results: arrows, Home and End go from
 * one to the next.
 */
export function Rail({ views, shown, show }: RailProps) {
  const rail = useRef<HTMLElement>(null);
  useEffect(() => {
    const [box, entry] = [rail.current, document.getElementById(railId(shown.id))];
    if (box === null || entry === null) return;
    box.scrollTop = scrolledTo(box.scrollTop, entry.offsetTop - box.offsetTop, entry.offsetHeight, box.clientHeight);
  }, [shown.id]);
  const onKeyDown = (event: KeyboardEvent) => {
    const at = views.findIndex(({ id }) => id === shown.id);
    const to = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: views.length - 1 }[event.key];
    const next = to === undefined ? undefined : views[(to + views.length) % views.length];
    if (next === undefined) return;
    event.preventDefault();
    show(next.id, false);
    document.getElementById(railId(next.id))?.focus();
  };
  return (
    <nav ref={rail} className="rail" aria-label="Tables and sheets" onKeyDown={onKeyDown}>
      <label className="rail-list">
        <span className="unseen">Table or sheet</span>
        <select value={shown.id} onChange={(event) => show(event.target.value, false)}>
          {groupsOf(views).map(([group, members]) => (
            <optgroup key={group} label={group}>
              {members.map((view) => (
                <option key={view.id} value={view.id}>
                  {view.title}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      </label>
      {groupsOf(views).map(([group, members]) => (
        <section key={group} aria-label={group}>
          <h2>{group}</h2>
          {members.map((view) => {
            const entries = entriesIn(view);
            return (
              <button
                key={view.id}
                id={railId(view.id)}
                type="button"
                aria-current={view.id === shown.id ? "true" : undefined}
                tabIndex={view.id === shown.id ? 0 : -1}
                onClick={() => show(view.id, true)}
              >
                <span>{view.title}</span>
                {entries !== null && (
                  <span className="count">
                    {entries}
                    <span className="unseen"> entries</span>
                  </span>
                )}
              </button>
            );
          })}
        </section>
      ))}
    </nav>
  );
}

const groupsOf = (views: readonly View[]): readonly (readonly [string, readonly View[]])[] =>
  [...new Set(views.map(({ group }) => group))].map((group) => [group, views.filter((view) => view.group === group)]);

const railId = (view: string): string => `rail-${encodeURIComponent(view)}`;
