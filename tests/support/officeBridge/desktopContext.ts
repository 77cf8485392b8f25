/** What `window.external` holds in a pane of Excel for Windows, as far as Office.js asks for it while it starts. */
export type DesktopOptions = {
  readonly excelApi: string;
  readonly background: string;
  /** Where the open workbook lies. Its settings are kept under that, as Excel keeps them in the file. */
  readonly workbook?: string;
  /** The workbook takes no settings. */
  readonly isReadOnly?: boolean;
};

/** To be run in the page, before Office.js. It takes plain data and uses nothing from outside itself. */
export function becomeDesktop({ excelApi, background, workbook = "", isReadOnly = false }: DesktopOptions): void {
  const settings = {
    Read: (keys: string[], values: string[]) => {
      const stored = JSON.parse(localStorage.getItem(`settings of ${workbook}`) ?? "{}") as Record<string, string>;
      keys.push(...Object.keys(stored));
      values.push(...Object.values(stored));
    },
    Write: (keys: readonly string[], values: readonly string[]) => {
      if (isReadOnly) throw new Error("The workbook is read-only.");
      localStorage.setItem(`settings of ${workbook}`, JSON.stringify(Object.fromEntries(keys.map((key, index) => [key, values[index]]))));
    },
  };
  const context = {
    GetAppType: () => 1, // Excel
    GetSolutionRef: () => "pennyacre",
    GetAppVersionMajor: () => 16,
    GetAppVersionMinor: () => 0,
    GetAppUILocale: () => "en-US",
    GetAppDataLocale: () => "en-US",
    GetDocUrl: () => workbook,
    GetAppCapabilities: () => 1,
    GetActivationMode: () => 0,
    GetControlIntegrationLevel: () => 2,
    GetSolutionToken: () => "",
    GetCorrelationId: () => "",
    GetInstanceId: () => "",
    GetTouchEnabled: () => false,
    GetCommerceAllowed: () => false,
    GetSupportedMatrix: () => JSON.stringify({ ExcelApi: excelApi, AddinCommands: "1.1" }),
    GetHostCustomMessage: () => 0,
    GetHostFullVersion: () => "16.0.17000.10000",
    GetInitialDisplayMode: () => 0,
    GetSettings: () => settings,
    GetOfficeThemeInfo: () => JSON.stringify({ bodyBackgroundColor: parseInt(background, 16) }),
  };
  const external = { GetHostInfo: () => "Excel$Win32$16.01$en-US$$$$0", GetContext: () => context, GetLoggingAllowed: () => false };
  Object.defineProperty(window, "external", { value: external });
}
