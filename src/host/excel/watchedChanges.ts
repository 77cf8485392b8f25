import { attempt } from "./attempt";
import type { Supports } from "./supports";

export type WatchOptions = { readonly seconds: number; readonly quiet: number; readonly supports: Supports };

/**
 * Calls back once changes have ceased for `quiet` milliseconds. The events are hints only: what they say is not used, since
 * Excel leaves some out. Before ExcelApi 1.9 only cells in tables are watched, not the grower's own matched ranges.
 */
export async function watchChanges(changed: () => void, { seconds, quiet, supports }: WatchOptions): Promise<() => Promise<void>> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let stopped = false;
  const hint = async () => {
    clearTimeout(timer);
    if (!stopped) timer = setTimeout(changed, quiet);
  };
  const registered = await attempt({ seconds }, async (context, goOn) => {
    const { tables, worksheets } = context.workbook;
    const cells = supports("1.9") ? worksheets.onChanged.add(hint) : tables.onChanged.add(hint);
    const sheets = worksheets.onDeleted.add(hint);
    const receipt = context.workbook.protection.load("protected");
    await context.sync();
    // An answer without it says nothing of the handlers either: to be deaf in silence would be worse than to be told.
    void receipt.protected;
    try {
      goOn();
    } catch (givenUp) {
      // Nobody waits for it any more: what was registered so late would tell of changes for ever.
      stopped = true;
      for (const handler of [cells, sheets]) handler.remove();
      await context.sync();
      throw givenUp;
    }
    return { context, handlers: [cells, sheets] };
  });
  return async () => {
    stopped = true;
    clearTimeout(timer);
    // A handler can be removed only in the context that added it.
    await attempt({ seconds, context: registered.context }, async (context) => {
      for (const handler of registered.handlers) handler.remove();
      await context.sync();
    });
  };
}
