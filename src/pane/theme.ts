import { createDarkTheme, createLightTheme, teamsHighContrastTheme, type BrandVariants, type Theme } from "@fluentui/react-components";
import { useSyncExternalStore } from "react";

export type PaneTheme = "light" | "dark" | "highContrast";

/** A quiet spruce green, from nearly black to nearly white. */
const spruce: BrandVariants = {
  10: "#040a06", 20: "#0c1a11", 30: "#13291b", 40: "#1a3825", 50: "#214630", 60: "#27533a", 70: "#2d5f43", 80: "#346b4c",
  90: "#45805d", 100: "#589570", 110: "#70aa86", 120: "#8abd9d", 130: "#a4cfb4", 140: "#c0e0cb", 150: "#dcf0e2", 160: "#f2faf4",
};

const dark = createDarkTheme(spruce);

/** The looks of the pane. High contrast is for hosts that ask for it; the system's own forced colours rule over all of them. */
export const paneThemes: Record<PaneTheme, Theme> = {
  light: createLightTheme(spruce),
  // The dark theme takes its text in brand colour from a tone too dark for small print.
  dark: { ...dark, colorBrandForeground1: spruce[120], colorBrandForeground2: spruce[130], colorCompoundBrandForeground1: spruce[120], colorBrandForegroundLink: spruce[120] },
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
