import { createDarkTheme, createLightTheme, teamsHighContrastTheme, type BrandVariants, type Theme } from "@fluentui/react-components";
import { useSyncExternalStore } from "react";

export type PaneTheme = "light" | "dark" | "highContrast";

/** Slate blue, from nearly black to nearly white. */
const slate: BrandVariants = {
  10: "#06080b",
  20: "#10171f",
  30: "#192531",
  40: "#233343",
  50: "#2b4054",
  60: "#334c64",
  70: "#3b5873",
  80: "#436382",
  90: "#50779c",
  100: "#668cb0",
  110: "#81a1be",
  120: "#9cb4cc",
  130: "#b5c7d9",
  140: "#cddae5",
  150: "#e5ebf2",
  160: "#f6f8fb",
};

const dark = createDarkTheme(slate);

/** The looks of the pane. High contrast is for hosts that ask for it; the system's own forced colours rule over all of them. */
export const paneThemes: Record<PaneTheme, Theme> = {
  light: createLightTheme(slate),
  // The dark theme takes its text in brand colour from a tone too dark for small print.
  dark: {
    ...dark,
    colorBrandForeground1: slate[120],
    colorBrandForeground2: slate[130],
    colorCompoundBrandForeground1: slate[120],
    colorBrandForegroundLink: slate[120],
  },
  highContrast: teamsHighContrastTheme,
};

const query = () => window.matchMedia("(prefers-color-scheme: dark)");

/** The theme asked for; without one, light or dark as the system prefers, now and after it changes. */
export function useTheme(asked: PaneTheme | undefined): PaneTheme {
  const preferred = useSyncExternalStore(
    (changed) => {
      const dark = query();
      dark.addEventListener("change", changed);
      return () => dark.removeEventListener("change", changed);
    },
    (): PaneTheme => (query().matches ? "dark" : "light"),
  );
  return asked ?? preferred;
}
