import { useLayoutEffect, useRef, type KeyboardEvent } from "react";
import type { GridSheet } from "./gridBook";
import { scrolledTo } from "./scrolledTo";

export type SheetTabsProps = {
  readonly sheets: readonly GridSheet[];
  readonly shown: string;
  readonly show: (sheet: string, focusGrid: boolean) => void;
};

/** The sheets of the workbook: arrows, Home and End go from one to the next. */
export function SheetTabs({ sheets, shown, show }: SheetTabsProps) {
  const strip = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const tab = document.getElementById(tabId(shown));
    if (strip.current === null || tab === null) return;
    const start = tab.offsetLeft - strip.current.offsetLeft;
    strip.current.scrollLeft = scrolledTo(strip.current.scrollLeft, start, tab.offsetWidth, strip.current.clientWidth);
  }, [shown]);
  const onKeyDown = (event: KeyboardEvent) => {
    const at = sheets.findIndex(({ name }) => name === shown);
    const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: sheets.length - 1 }[event.key];
    const next = to === undefined ? undefined : sheets[(to + sheets.length) % sheets.length];
    if (next === undefined) return;
    event.preventDefault();
    show(next.name, false);
    document.getElementById(tabId(next.name))?.focus();
  };
  return (
    <div ref={strip} className="sheet-tabs" role="tablist" aria-label="Sheets" onKeyDown={onKeyDown}>
      {sheets.map(({ name }) => (
        <button
          key={name} id={tabId(name)} type="button" role="tab" aria-selected={name === shown} aria-controls="sheet-panel"
          tabIndex={name === shown ? 0 : -1} onClick={() => show(name, true)}
        >
          {name}
        </button>
      ))}
    </div>
  );
}

/** The element id of a sheet's tab. */
export const tabId = (sheet: string): string => `sheet-${encodeURIComponent(sheet)}`;
