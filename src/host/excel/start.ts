import type { WorkbookHost } from "../workbookHost";
import { excelHost } from "./excelHost";
import { workbookOpener, type OpenWorkbook } from "./openWorkbook";

/** How the Office program around the pane looks. High contrast is told by the browser (`forced-colors`), not here. */
type OfficeLook = { readonly dark: boolean };

export type Started =
  | {
      readonly ok: true;
      readonly host: WorkbookHost;
      /** Null where Excel does not tell, as on the web. */
      readonly look: OfficeLook | null;
      /** Language and region of Excel, such as `en-US`. */
      readonly language: string;
      /** Opens another workbook; `null` where this Excel cannot. */
      readonly openWorkbook: OpenWorkbook | null;
      /** Where the open workbook lies, as far as Excel tells; blank of a new one. */
      readonly workbook: string;
    }
  | { readonly ok: false; readonly message: string };

const oldest = "1.7";

/** As long as nobody thinks yet that it hangs; Office.js itself takes two to four seconds on a slow line. */
const longWait = 10_000;
const silent =
  "Excel has not answered for ten seconds. Pennyacre starts as soon as it does. If it does not: finish the cell or dialog that is " +
  "open in Excel, or close the pane and open it again. Nothing in the workbook has been changed.";

/**
 * Waits for Excel and opens its workbook to the pane, or says in words why that cannot be.
 *
 * @param tellSilence takes what to say where Excel has not answered for ten seconds; it is still waited for
 */
export async function startInExcel(tellSilence: (message: string) => void): Promise<Started> {
  if (typeof Office === "undefined") {
    return { ok: false, message: "Office.js could not be loaded. Check the connection to the internet, then open the pane again." };
  }
  const waiting = setTimeout(() => {
    tellSilence(silent);
  }, longWait);
  const { host } = await Office.onReady().finally(() => {
    clearTimeout(waiting);
  });
  if (host !== Office.HostType.Excel) {
    return { ok: false, message: "This page is the pane of the Excel add-in Pennyacre. Open it from the ribbon in Excel." };
  }
  if (!Office.context.requirements.isSetSupported("ExcelApi", oldest)) {
    return {
      ok: false,
      message:
        `This version of Excel is too old for Pennyacre, which needs ExcelApi ${oldest} (Excel 2021 or later, Microsoft 365, or Excel ` +
        "on the web).",
    };
  }
  const { displayLanguage, document } = Office.context;
  return {
    ok: true,
    host: excelHost(),
    look: officeLook(),
    language: displayLanguage,
    openWorkbook: workbookOpener(),
    // Its type promises an address, and a new workbook has none in some hosts.
    workbook: (document.url as string | null | undefined) ?? "",
  };
}

function officeLook(): OfficeLook | null {
  const theme = Office.context.officeTheme as Office.OfficeTheme | undefined;
  const background = theme?.bodyBackgroundColor;
  return background === undefined ? null : { dark: brightness(background) < 0.5 };
}

/** From 0 (black) to 1 (white): the mean of red, green and blue of a colour like `#262626`. */
function brightness(colour: string): number {
  const parts = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})/i.exec(colour)?.slice(1) ?? ["ff", "ff", "ff"];
  return parts.reduce((sum, part) => sum + parseInt(part, 16), 0) / (3 * 255);
}
