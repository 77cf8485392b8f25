/** What of others is in the build is named in it, with its licence: `npm test` builds before it runs this. */
import { readdirSync, readFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { notices } from "../../shared/build/notices.js";

const shipped = readFileSync("dist/third-party-notices.txt", "utf8");
const { dependencies } = JSON.parse(readFileSync("package.json", "utf8")) as { dependencies: Readonly<Record<string, string>> };

describe("the third-party notices", () => {
  it.each(Object.entries(dependencies))("name %s %s", (name, version) => {
    expect(shipped).toContain(`\n${name} ${version}\n`);
  });
  it("have the words of the licences, and packages that came with others", () => {
    expect(shipped).toMatch(/Permission is hereby granted, free of charge/);
    expect(shipped).toMatch(/\nscheduler \d/);
  });
  it("are in the zip that is carried to a web server", () => {
    const zip = readdirSync("dist").find((name) => /^pennyacre-.*\.zip$/.test(name))!;
    const files = unzipSync(new Uint8Array(readFileSync(`dist/${zip}`)));
    expect(strFromU8(files["pennyacre/third-party-notices.txt"]!)).toBe(shipped);
  });
  it("refuse a package under a licence that we may not ship", () => {
    expect(() => notices(["node_modules/@microsoft/office-js/dist/office.js"])).toThrow(/has the licence/);
  });
});
