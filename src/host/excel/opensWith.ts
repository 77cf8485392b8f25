import { HostError, type OpensWith } from "../workbookHost";

/** The name that Excel itself looks for in the file (Microsoft: "Automatically open a task pane with a document"). */
const setting = "Office.AutoShowTaskpaneWithDocument";

/** How the open workbook is told to bring the pane along; `null` where Excel cannot (before AddinCommands 1.1). */
export function opensWith(): OpensWith | null {
  const { requirements, document } = Office.context;
  if (!requirements.isSetSupported("AddinCommands", "1.1")) return null;
  return {
    isOn: () => document.settings.get(setting) === true,
    choose: (isOn) =>
      new Promise((done, refused) => {
        const before: unknown = document.settings.get(setting);
        if (isOn) document.settings.set(setting, true);
        else document.settings.remove(setting);
        document.settings.saveAsync(({ status, error }) => {
          if (status === Office.AsyncResultStatus.Succeeded) return done();
          // What is not in the workbook is not shown as chosen.
          if (before === true) document.settings.set(setting, true);
          else document.settings.remove(setting);
          refused(
            new HostError(
              "failed",
              `Excel did not take that into the workbook: ${error.message} It may be protected or open for reading only.`,
            ),
          );
        });
      }),
  };
}
