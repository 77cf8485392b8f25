import { useRef, type KeyboardEvent } from "react";

type TabChoice<Id extends string> = {
  readonly id: Id;
  readonly title: string;
  /** The element that the tab shows, once it is there. */
  readonly controls: string | null;
};

export type TabsProps<Id extends string> = {
  readonly label: string;
  readonly tabs: readonly TabChoice<Id>[];
  /** The page that is open; it may be one without a tab. */
  readonly chosen: Id;
  readonly choose: (id: Id) => void;
  /** The element id of a tab, so that its page can be named after it. */
  readonly elementId: (id: Id) => string;
};

/**
 * Tabs as the ARIA Authoring Practices describe them: one stop for the Tab key, arrows, Home and End go between them and open
 * the page. (Fluent's own bring a focus manager whose hidden stops an accessibility check rightly objects to.)
 */
export function Tabs<Id extends string>({ label, tabs, chosen, choose, elementId }: TabsProps<Id>) {
  const list = useRef<HTMLDivElement>(null);
  const stop = tabs.some(({ id }) => id === chosen) ? chosen : tabs[0]?.id;
  const onKeyDown = (event: KeyboardEvent) => {
    const at = tabs.findIndex(({ id }) => id === stop);
    const targets: Record<string, number> = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: tabs.length - 1 };
    const target = targets[event.key];
    if (target === undefined) return;
    event.preventDefault();
    const { id } = tabs[(target + tabs.length) % tabs.length]!;
    choose(id);
    list.current?.querySelector<HTMLElement>(`#${CSS.escape(elementId(id))}`)?.focus();
  };
  return (
    <div ref={list} className="pn-tabs" role="tablist" aria-label={label} onKeyDown={onKeyDown}>
      {tabs.map(({ id, title, controls }) => (
        <button
          key={id}
          type="button"
          role="tab"
          id={elementId(id)}
          aria-selected={id === chosen}
          tabIndex={id === stop ? 0 : -1}
          {...(controls !== null && { "aria-controls": controls })}
          onClick={() => choose(id)}
        >
          {title}
        </button>
      ))}
    </div>
  );
}
