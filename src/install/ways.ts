/**
 * How Pennyacre is put into Excel, step by step. After Microsoft's pages *Sideload Office Add-ins to Office on the web* (December
 * 2025), *… for testing from a network share* (May 2025), *… on Mac for testing* (February 2025) and *Clear the Office cache*
 * (December 2025); the administrator's steps after what hosts of add-ins tell their customers of the admin center in 2026.
 */

export type Way = {
  readonly id: string;
  readonly title: string;
  readonly steps: readonly string[];
  /** What to know beside the steps. */
  readonly notes: readonly string[];
};

/** The folder that stands for the reader's own; the install page shows the one where it lies in its place. */
export const exampleFolder = "https://farm.example/pennyacre";

/** The buttons of the ribbon in their order, each with the name of its picture and what it opens. */
export const buttons = [
  { label: "Season costs", picture: "season", opens: "what an acre costs, and the price and yield that pay for it" },
  { label: "Add a purchase", picture: "inputs", opens: "one line of an invoice, with what it does to the cost of an acre" },
  { label: "Lender pages", picture: "lender", opens: "two pages and a cash flow by month" },
  { label: "Help", picture: "help", opens: "what figures mean, tables and their columns, printing, undo, cautions" },
] as const;

/** Names of menus and buttons stand between asterisks, what is typed between backquotes. */
export const ways: readonly Way[] = [
  {
    id: "web",
    title: "Excel on the web",
    steps: [
      "Save manifest.xml: the button *Save manifest.xml* stands at the top of the install page.",
      "Open a workbook in Excel on the web.",
      "Choose *Home*, *Add-ins*, then *More Settings*.",
      "In the dialog *Office Add-ins* choose *Upload My Add-in*.",
      "Browse to manifest.xml, then choose *Upload*.",
      "The group *Pennyacre* now stands on the *Home* tab: choose *Season costs*.",
    ],
    notes: [
      "Your browser keeps the manifest. In another browser, or after its data were cleared, go through these steps again.",
      "Where *Upload My Add-in* is missing, your organization does not allow it: ask its administrator.",
    ],
  },
  {
    id: "windows",
    title: "Excel for Windows",
    steps: [
      "Save manifest.xml: the button *Save manifest.xml* stands at the top of the install page.",
      "In File Explorer make a folder, such as `Addins`. Right-click it, choose *Properties*, the tab *Sharing*, then *Share*.",
      "Add yourself, with *Read/Write*, and choose *Share*. Write down the network path that is shown, such as `\\\\MYPC\\Addins`. " +
        "Choose *Done*, then *Close*.",
      "Put manifest.xml into that folder.",
      "In Excel open a blank workbook and choose *File*, *Options*, *Trust Center*, *Trust Center Settings*, *Trusted Add-in Catalogs*.",
      "Type the network path into *Catalog Url*, choose *Add catalog*, tick *Show in Menu*, then *OK* and *OK*.",
      "Close Excel and open it again.",
      "Choose *Home*, *Add-ins*, then *Advanced*. At the top of the dialog choose *SHARED FOLDER*, then *Pennyacre* and *Add*.",
      "The group *Pennyacre* now stands on the *Home* tab: choose *Season costs*.",
    ],
    notes: [
      "Microsoft means this way for trying out. Whoever hands Pennyacre to others takes the administrator's way below.",
      "When a new version brings other buttons, add it from *SHARED FOLDER* once more.",
    ],
  },
  {
    id: "mac",
    title: "Excel for Mac",
    steps: [
      "Save manifest.xml: the button *Save manifest.xml* stands at the top of the install page.",
      "In Finder press Command+Shift+G and enter `~/Library/Containers/com.microsoft.Excel/Data/Documents`.",
      "Make a folder `wef` there if there is none, and put manifest.xml into it.",
      "Quit Excel, open it again, and open a workbook.",
      "Choose *Home*, *Add-ins*, then *Pennyacre* from the menu.",
      "The group *Pennyacre* now stands on the *Home* tab: choose *Season costs*.",
    ],
    notes: ["If that folder is not there, start Excel once: it makes the folder."],
  },
  {
    id: "administrator",
    title: "For an administrator: to thirty advisors at once",
    steps: [
      "Save manifest.xml: the button *Save manifest.xml* stands at the top of the install page.",
      "Sign in to the Microsoft 365 admin center (`admin.microsoft.com`) and choose *Settings*, then *Integrated apps*.",
      "Choose *Upload custom apps*, and *Office Add-in* as the type of app.",
      "Upload manifest.xml. Or put it into the folder of these pages on the server, and give its link: " +
        "`https://farm.example/pennyacre/manifest.xml`.",
      "Assign it to the group of your advisors, or first to yourself, then *Next*, accept the permissions and finish.",
      "Within a day the group *Pennyacre* stands on the *Home* tab of each of them, on Windows, Mac and the web. They install nothing.",
    ],
    notes: [
      "The permission asked for is to read and write the open workbook, and no more.",
      "Put a new version over the old files. Where its manifest has another version number, upload that to *Integrated apps* too.",
    ],
  },
  {
    id: "remove",
    title: "To take it out again",
    steps: [],
    notes: [
      "On the web: clear the data that your browser keeps of Excel's pages.",
      "On Windows: take manifest.xml out of the folder. Then *File*, *Options*, *Trust Center*, *Trust Center Settings*, *Trusted Add-in " +
        "Catalogs*, tick *Next time Office starts, clear all previously-started web add-ins cache*, *OK*, and restart Excel.",
      "On a Mac: take manifest.xml out of `wef`, and empty `~/Library/Containers/com.Microsoft.OsfWebHost/Data`.",
      "An administrator removes it under *Integrated apps*.",
      "Your workbooks stay as they are: tables and sheets are ordinary ones.",
    ],
  },
];
