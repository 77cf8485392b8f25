import type { Bridge } from "./bridge";

/**
 * Gives the loaded library its `Office.context`, which in Excel comes from a file of the library that needs Excel itself,
 * and has it refuse members that are newer than the requirement set, a check that it has but leaves switched off.
 */
export function setOfficeContext({ isSetSupported }: Bridge): void {
  const context = { requirements: { isSetSupported }, platform: "PC", displayLanguage: "en-US" };
  const { OSF, OfficeExtension } = globalThis as unknown as Record<"OSF" | "OfficeExtension", Record<string, unknown>>;
  OSF["_OfficeAppFactory"] = { getContext: () => context };
  (OfficeExtension["CommonUtility"] as Record<string, unknown>)["_doApiNotSupportedCheck"] = true;
}
