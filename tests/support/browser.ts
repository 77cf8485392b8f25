/** Chromium for tests, and a server of static files for the pages it opens. Both run on this machine only. */
import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize, sep } from "node:path";
import { chromium, type Browser, type Page } from "playwright-core";

const candidates = [process.env["CHROMIUM_PATH"], "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

/**
 * The Chromium to test with: the one that `CHROMIUM_PATH` names, or the first usual place that has one.
 *
 * @throws Error in words when there is none, so that a missing browser is never taken for a fault of the page
 */
export function chromiumPath(): string {
  const found = candidates.find((path) => path !== undefined && existsSync(path));
  if (found === undefined) {
    throw new Error("No Chromium found. Install it (Debian: apt-get install chromium) or set CHROMIUM_PATH to its program file.");
  }
  return found;
}

/** Starts a headless Chromium that asks nothing of the network by itself. The caller closes it. */
export function startBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: chromiumPath(),
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      "--no-first-run",
    ],
  });
}

/** What a page did that it should not: asked for something elsewhere, threw, or logged an error. */
export type Misdeeds = { readonly elsewhere: string[]; readonly errors: string[] };

/** Watches a page from before its first request. `data:` and `blob:` addresses stay inside the page and are allowed. */
export function watch(page: Page, origin: string): Misdeeds {
  const misdeeds: Misdeeds = { elsewhere: [], errors: [] };
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(`${origin}/`) && !/^(data|blob):/.test(url)) misdeeds.elsewhere.push(url);
  });
  page.on("pageerror", (error) => misdeeds.errors.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") misdeeds.errors.push(message.text());
  });
  return misdeeds;
}

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".wasm": "application/wasm",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

/** A server of the files of some folders. `origin` is `http://127.0.0.1:port`. */
export type StaticServer = { readonly origin: string; readonly close: () => Promise<void> };

/**
 * Serves folders at paths of one origin, e.g. `{ "/": "dist", "/some/where/": "dist" }`; the longest matching path wins.
 * What is not there answers 404; nothing outside the folders is served.
 */
export async function serveFiles(folders: Readonly<Record<string, string>>): Promise<StaticServer> {
  const mounts = Object.keys(folders).sort((a, b) => b.length - a.length);
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
    const mount = mounts.find((each) => path.startsWith(each));
    const folder = mount === undefined ? undefined : folders[mount];
    const asked = folder === undefined ? undefined : normalize(join(folder, path.slice(mount?.length ?? 0)));
    const inside = asked !== undefined && (asked + sep).startsWith(normalize(folder + sep));
    const file = inside && existsSync(asked) && statSync(asked).isDirectory() ? join(asked, "index.html") : asked;
    if (!inside || file === undefined || !existsSync(file)) {
      response.writeHead(404, { "content-type": "text/plain" }).end("Not here.");
      return;
    }
    response.writeHead(200, { "content-type": types[extname(file)] ?? "application/octet-stream" }).end(readFileSync(file));
  });
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const { port } = server.address() as AddressInfo;
  return {
    origin: `http://127.0.0.1:${port}`,
    close: () =>
      new Promise((closed) => {
        server.closeAllConnections();
        server.close(() => closed());
      }),
  };
}
