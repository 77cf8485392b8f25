/** What kind of workbook the package says it holds; its name has to end accordingly. */
import { workbookPart } from "./packageParts";
import { documentOf, elements } from "./xml";
import type { Parts } from "./zip";

export type WorkbookKind = "plain" | "macros" | "template";

export function workbookKind(parts: Parts): WorkbookKind {
  const types = documentOf(parts.get("[Content_Types].xml")!);
  const part = `/${workbookPart(parts)}`.toLowerCase();
  const own = elements(types, "Override").find((each) => each.getAttribute("PartName")?.toLowerCase() === part);
  const usual = elements(types, "Default").find((each) => part.endsWith(`.${each.getAttribute("Extension")?.toLowerCase()}`));
  const type = (own ?? usual)?.getAttribute("ContentType")?.toLowerCase() ?? "";
  if (type.includes("template")) return "template";
  return type.includes("macroenabled") ? "macros" : "plain";
}
