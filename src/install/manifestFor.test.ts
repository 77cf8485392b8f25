import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { folderOf, manifestFor, serverFaults } from "./manifestFor";
import { buttons, ways } from "./ways";

const source = readFileSync("manifest.xml", "utf8");
const addresses = (manifest: string) => [...manifest.matchAll(/DefaultValue="(https?:[^"]*)"/g)].map(([, address]) => address!);

describe("the folder of the pages", () => {
  it.each([
    ["https://farm.example/install.html", "https://farm.example"],
    ["https://farm.example/tools/pennyacre/install.html?from=mail#mac", "https://farm.example/tools/pennyacre"],
    ["https://farm.example:8443/tools/", "https://farm.example:8443/tools"],
    ["https://farm.example/our farm/install.html", "https://farm.example/our%20farm"],
  ])("of %s is %s", (address, folder) => {
    expect(folderOf(address)).toEqual({ ok: true, value: folder });
  });

  it("is none over http or from a disk, and says what to do", () => {
    expect(folderOf("http://farm.example/tools/install.html")).toEqual({
      ok: false,
      problems: [expect.stringContaining("https://farm.example/tools/install.html")],
    });
    expect(folderOf("file:///C:/Users/farm/pennyacre/install.html")).toEqual({
      ok: false,
      problems: [expect.stringMatching(/opened from a disk.*web server/)],
    });
  });
});

describe("the manifest", () => {
  it("names every address in the folder of the pages, and nothing of the source's any more", () => {
    const made = manifestFor(source, "https://farm.example/tools/pennyacre");
    expect(made).not.toContain("localhost");
    expect(addresses(made)).toEqual(
      addresses(source).map((each) => each.replace("https://localhost:3000", "https://farm.example/tools/pennyacre")),
    );
    expect(addresses(made).length).toBeGreaterThan(10);
  });

  it("stays well formed whatever stands in the address", () => {
    const made = manifestFor(source, "https://farm.example/a&b'$&c");
    expect(addresses(made)[0]).toMatch(/^https:\/\/farm\.example\/a&amp;b&apos;\$&amp;c\//);
  });

  it("is not made of something else", () => {
    expect(() => manifestFor("<OfficeApp/>", "https://farm.example")).toThrow();
  });
});

describe("the server", () => {
  const answer = (status = 200, headers: Readonly<Record<string, string>> = {}) => ({ status, headers: new Headers(headers) });
  const told = (pane: Readonly<Record<string, string>>, icon: Readonly<Record<string, string>> = {}) =>
    serverFaults({ pane: answer(200, pane), icon: answer(200, icon) });

  it("is in nobody's way where it just serves", () => {
    expect(
      told({ "cache-control": "no-cache" }, { "cache-control": "max-age=600", "cross-origin-resource-policy": "cross-origin" }),
    ).toEqual([]);
    expect(told({ "content-security-policy": "default-src 'self'; frame-ancestors *" })).toEqual([]);
  });

  it.each([
    [{ "x-frame-options": "SAMEORIGIN" }, {}, /X-Frame-Options/],
    [{ "content-security-policy": "frame-ancestors 'self'; default-src *" }, {}, /frame-ancestors/],
    [{}, { "cross-origin-resource-policy": "same-origin" }, /Cross-Origin-Resource-Policy/],
    [{}, { "cache-control": "No-Store" }, /Cache-Control/],
  ])("is told with %j and %j", (pane, icon, words) => {
    expect(told(pane, icon)).toEqual([expect.stringMatching(words)]);
  });

  it("is told where files are missing", () => {
    expect(serverFaults({ pane: answer(404), icon: answer(403) })).toEqual([
      expect.stringMatching(/^pane\.html is not beside this page \(answer 404\)/),
      expect.stringMatching(/^icons\/icon-32\.png is not beside this page \(answer 403\)/),
    ]);
  });
});

describe("the ways into Excel", () => {
  it("are the web, Windows, Mac and an administrator's, and the way out again", () => {
    expect(ways.map(({ id }) => id)).toEqual(["web", "windows", "mac", "administrator", "remove"]);
  });

  it("stand word for word in docs/excel.md, in the same order, before the developer's own machine", () => {
    const doc = readFileSync("docs/excel.md", "utf8").replace(/\s+/g, " ");
    let at = 0;
    for (const words of ways.flatMap(({ title, steps, notes }) => [`### ${title}`, ...steps, ...notes])) {
      const found = doc.indexOf(words, at);
      expect(found, words).toBeGreaterThanOrEqual(at);
      at = found;
    }
    expect(doc.indexOf("npm run start:excel", at)).toBeGreaterThan(at);
    expect(doc.indexOf("npm run start:excel")).toBeGreaterThan(at);
  });

  it("name the four buttons as the manifest and the docs do", () => {
    const labels = [...source.matchAll(/id="Pennyacre\.\w+\.Label" DefaultValue="([^"]+)"/g)].map(([, label]) => label);
    expect(buttons.map(({ label }) => label)).toEqual(labels);
    const doc = readFileSync("docs/excel.md", "utf8").replace(/\s+/g, " ");
    for (const { label, picture, opens } of buttons) expect(doc).toContain(`- ![](../shared/icons/${picture}-32.png) *${label}*: ${opens}`);
  });

  it("begin with the manifest and end with the ribbon", () => {
    for (const { id, steps } of ways.filter((way) => way.id !== "remove")) {
      expect(steps[0], id).toMatch(/^Save manifest\.xml/);
      expect(steps.at(-1), id).toContain("*Pennyacre*");
    }
  });
});
