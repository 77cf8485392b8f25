/** Tabs of this browser that have the same file open tell each other. */

export type TabMessage = { readonly tab: string; readonly name: string; readonly says: "opened" | "here too" | "saved" };

/** As much of a `BroadcastChannel` as is used here. */
export type Channel = {
  readonly postMessage: (message: TabMessage) => void;
  onmessage: ((event: { readonly data: TabMessage }) => void) | null;
};

export type OtherTabs = {
  /** A file was opened here; `null` for a workbook that comes from no file. */
  readonly opened: (name: string | null) => void;
  readonly saved: (name: string) => void;
};

/** The channel of all pages from this address; `null` where the browser has none. */
export const pageChannel = (): Channel | null =>
  typeof BroadcastChannel === "undefined" ? null : (new BroadcastChannel("pennyacre") as unknown as Channel);

/** Files are taken for the same by their names, because a browser tells a page no more of where a file lies. */
export function otherTabs(channel: Channel | null, tab: string, tell: (words: string) => void): OtherTabs {
  let open: string | null = null;
  const say = (name: string, says: TabMessage["says"]) => channel?.postMessage({ tab, name, says });
  if (channel !== null) {
    channel.onmessage = ({ data }) => {
      if (data.tab === tab || data.name !== open) return;
      if (data.says === "saved") {
        tell(
          `${data.name} was saved in another tab just now. What is shown here does not have what was changed there: open the file ` +
            "again before you go on.",
        );
        return;
      }
      tell(`${data.name} is open in another tab, too. Change it in one of them only: what is saved last takes the place of the other.`);
      if (data.says === "opened") say(data.name, "here too");
    };
  }
  return {
    opened: (name) => {
      open = name;
      if (name !== null) say(name, "opened");
    },
    saved: (name) => {
      if (name === open) say(name, "saved");
    },
  };
}
