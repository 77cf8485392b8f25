import { describe, expect, it } from "vitest";
import { handClock } from "../../tests/support/handClock";
import { DraftKeeper, quietBeforeDraft, type DraftNews } from "./draftKeeper";
import type { Draft, DraftStore } from "./drafts";

function storeInMemory(): DraftStore & { readonly drafts: Map<string, Draft>; full: boolean } {
  const drafts = new Map<string, Draft>();
  const store = {
    drafts,
    full: false,
    keep: async (draft: Draft) => {
      if (store.full) throw new Error("its storage is full");
      drafts.set(draft.id, draft);
    },
    all: async () => [...drafts.values()],
    remove: async (id: string) => void drafts.delete(id),
  };
  return store;
}

function keeperOf(store: DraftStore, id = "one") {
  const { later, pass } = handClock();
  const news: DraftNews[] = [];
  const book = { text: "" };
  const keeper = new DraftKeeper(
    store,
    { id, name: "season.xlsx", bytes: async () => new TextEncoder().encode(book.text) },
    later,
    (each) => news.push(each),
    () => 7,
  );
  return { keeper, pass, news, book };
}
/** Everything that was begun in the keeper is over after this. */
const settled = (keeper: DraftKeeper) => (keeper as unknown as { work: Promise<void> }).work;

describe("DraftKeeper", () => {
  it("keeps the workbook as it is a moment after the last entry", async () => {
    const store = storeInMemory();
    const { keeper, pass, news, book } = keeperOf(store);
    book.text = "12";
    keeper.changed();
    pass(quietBeforeDraft - 1);
    book.text = "12.5";
    keeper.changed();
    pass(quietBeforeDraft - 1);
    expect(store.drafts.size).toBe(0);
    pass(1);
    await settled(keeper);
    expect(new TextDecoder().decode(store.drafts.get("one")?.bytes)).toBe("12.5");
    expect(store.drafts.get("one")).toMatchObject({ name: "season.xlsx", at: 7, isHandedOut: false });
    expect(news).toEqual([{ kept: "yes" }]);
  });

  it("keeps the drafts of several workbooks, and drops one alone", async () => {
    const store = storeInMemory();
    const [one, other] = [keeperOf(store), keeperOf(store, "other")];
    for (const { keeper, pass } of [one, other]) {
      keeper.changed();
      pass(quietBeforeDraft);
      await settled(keeper);
    }
    await one.keeper.drop();
    expect([...store.drafts.keys()]).toEqual(["other"]);
  });

  it("tells of a full storage, and goes on when there is room again", async () => {
    const store = storeInMemory();
    store.full = true;
    const { keeper, pass, news } = keeperOf(store);
    keeper.changed();
    pass(quietBeforeDraft);
    await settled(keeper);
    expect(news).toEqual([{ kept: "no", why: "its storage is full" }]);
    store.full = false;
    keeper.changed();
    pass(quietBeforeDraft);
    await settled(keeper);
    expect(news.at(-1)).toEqual({ kept: "yes" });
  });

  it("writes no draft after it was dropped, and marks one that was handed out", async () => {
    const store = storeInMemory();
    const { keeper, pass } = keeperOf(store);
    keeper.changed();
    await keeper.drop();
    pass(quietBeforeDraft);
    await settled(keeper);
    expect(store.drafts.size).toBe(0);
    await keeper.handedOut();
    expect(store.drafts.get("one")).toMatchObject({ isHandedOut: true });
  });
});
