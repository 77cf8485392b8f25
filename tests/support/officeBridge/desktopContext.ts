/** What `window.external` holds in a pane of Excel for Windows, as far as Office.js asks for it while it starts. */
export type DesktopOptions = { readonly excelApi: string; readonly background: string };

/** To be run in the page, before Office.js. It takes plain data and uses nothing from outside itself. */
export function becomeDesktop({ excelApi, background }: DesktopOptions): void {
  const context = {
    GetAppType: () => 1, // Excel
    GetSolutionRef: () => "pennyacre",
    GetAppVersionMajor: () => 16,
    GetAppVersionMinor: () => 0,
    GetAppUILocale: () => "en-US",
    GetAppDataLocale: () => "en-US",
    GetDocUrl: () => "",
    GetAppCapabilities: () => 1,
    GetActivationMode: () => 0,
    GetControlIntegrationLevel: () => 2,
    GetSolutionToken: () => "",
    GetCorrelationId: () => "",
    GetInstanceId: () => "",
    GetTouchEnabled: () => false,
    GetCommerceAllowed: () => false,
    GetSupportedMatrix: () => JSON.stringify({ ExcelApi: excelApi }),
    GetHostCustomMessage: () => 0,
    GetHostFullVersion: () => "16.0.17000.10000",
    GetInitialDisplayMode: () => 0,
    GetSettings: () => ({ Read: () => undefined }),
    GetOfficeThemeInfo: () => JSON.stringify({ bodyBackgroundColor: parseInt(background, 16) }),
  };
  const external = { GetHostInfo: () => "Excel$Win32$16.01$en-US$$$$0", GetContext: () => context, GetLoggingAllowed: () => false };
  Object.defineProperty(window, "external", { value: external });
}
