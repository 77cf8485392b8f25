import type { Bridge } from "./bridge";

/** Gives the loaded library its `Office.context`, which in Excel comes from a file of the library that needs Excel itself. */
export function setOfficeContext({ isSetSupported }: Bridge): void {
  const context = { requirements: { isSetSupported }, platform: "PC", displayLanguage: "en-US" };
  const { OSF } = globalThis as unknown as { OSF: Record<string, unknown> };
  OSF["_OfficeAppFactory"] = { getContext: () => context };
}
