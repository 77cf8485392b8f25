import { useSyncExternalStore } from "react";

const dark = () => window.matchMedia("(prefers-color-scheme: dark)");

/** Whether the system asks for dark or light, now and after it changes. */
export function useColourScheme(): "light" | "dark" {
  return useSyncExternalStore(
    (changed) => {
      const query = dark();
      query.addEventListener("change", changed);
      return () => query.removeEventListener("change", changed);
    },
    () => (dark().matches ? "dark" : "light"),
  );
}
