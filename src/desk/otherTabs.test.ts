import { describe, expect, it } from "vitest";
import { otherTabs, type Channel, type TabMessage } from "./otherTabs";

/** Tabs of one browser: what one posts all others hear. */
function twoTabs() {
  const channels: Channel[] = [];
  const channel = (): Channel => {
    const own: Channel = {
      postMessage: (data: TabMessage) => {
        for (const other of channels) if (other !== own) other.onmessage?.({ data });
      },
      onmessage: null,
    };
    channels.push(own);
    return own;
  };
  const heard: { one: string[]; other: string[] } = { one: [], other: [] };
  return {
    heard,
    one: otherTabs(channel(), "one", (words) => heard.one.push(words)),
    other: otherTabs(channel(), "other", (words) => heard.other.push(words)),
  };
}

describe("otherTabs", () => {
  it("tells both tabs once that they have the same file open", () => {
    const { heard, one, other } = twoTabs();
    one.opened("season.xlsx");
    other.opened("season.xlsx");
    expect(heard.one).toHaveLength(1);
    expect(heard.other).toHaveLength(1);
    expect(heard.other[0]).toContain("season.xlsx is open in another tab, too");
  });

  it("tells the other tab of a saved file, and nothing of other files or of workbooks from no file", () => {
    const { heard, one, other } = twoTabs();
    one.opened("season.xlsx");
    other.opened("other.xlsx");
    other.opened(null);
    other.saved("season.xlsx");
    expect(heard).toEqual({ one: [], other: [] });
    other.opened("season.xlsx");
    other.saved("season.xlsx");
    expect(heard.one.at(-1)).toContain("was saved in another tab");
  });
});
