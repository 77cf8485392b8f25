/** The manifest for the address where the pages lie. */
import { failed, ok, type Result } from "../result";

/** Where the manifest of the source says that the pages are. */
const servedHere = "https://localhost:3000";

/**
 * The folder of a page's address, without a slash at its end, as the manifest names it: `https://farm.example/tools/pennyacre` for
 * `https://farm.example/tools/pennyacre/install.html?from=mail`. Fails in words where Excel would not open it.
 */
export function folderOf(address: string): Result<string, string> {
  const { protocol, href, host } = new URL(".", address);
  if (protocol === "file:")
    return failed(
      "This page was opened from a disk. Excel loads add-ins from a web address only: put the whole folder on a web server, then open " +
        "install.html there.",
    );
  if (protocol !== "https:")
    return failed(
      `This page came over http, and Excel loads add-ins over https only. Open it as https://${host}${new URL(href).pathname}install.html, ` +
        "or ask whoever runs the server for a certificate.",
    );
  return ok(href.replace(/\/$/, ""));
}

const escapes: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&apos;" };
const inXml = (text: string): string => text.replace(/[&<>"']/g, (character) => escapes[character]!);

/**
 * The manifest of the source with the pages' own folder in it.
 *
 * @throws Error where the manifest of the source names no address of ours, which is a fault of the build
 */
export function manifestFor(source: string, folder: string): string {
  if (!source.includes(`"${servedHere}/`)) throw new Error(`The manifest names nothing at ${servedHere}`);
  return source.replaceAll(`"${servedHere}/`, () => `"${inXml(folder)}/`);
}

/** Headers of an answer of the server, as `fetch` gives them. */
type Answered = { readonly status: number; readonly headers: { readonly get: (name: string) => string | null } };

/** What about the server would keep Excel from showing the pane or its icons, in words for whoever runs it. */
export function serverFaults({ pane, icon }: { readonly pane: Answered; readonly icon: Answered }): readonly string[] {
  const missing = [
    ["pane.html", pane],
    ["icons/icon-32.png", icon],
  ] as const;
  const header = ({ headers }: Answered, name: string) => headers.get(name)?.toLowerCase() ?? "";
  const frames = /frame-ancestors([^;]*)/.exec(header(pane, "content-security-policy"))?.[1];
  return [
    ...missing
      .filter(([, { status }]) => status !== 200)
      .map(([file, { status }]) => `${file} is not beside this page (answer ${status}): put the whole folder on the server.`),
    ...(header(pane, "x-frame-options") === ""
      ? []
      : ["The server sends X-Frame-Options with pane.html, so Excel on the web cannot show it: switch that off for this folder."]),
    ...(frames === undefined || frames.includes("*")
      ? []
      : ["The server's Content-Security-Policy says frame-ancestors, so Excel on the web may not show the pane: leave that out."]),
    ...(/same-(origin|site)/.test(header(icon, "cross-origin-resource-policy"))
      ? ["The server sends Cross-Origin-Resource-Policy with the icons, so Excel on the web shows none: leave that out for icons."]
      : []),
    ...(/no-store|no-cache/.test(header(icon, "cache-control"))
      ? ["The server forbids keeping the icons (Cache-Control), and Excel then shows plain ones: allow that for icons."]
      : []),
  ];
}
