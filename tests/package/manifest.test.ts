/**
 * The manifest as Excel will read it. The parser is Microsoft's (office-addin-manifest); its online validation is left
 * out because a test may not depend on somebody else's service.
 */
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { OfficeAddinManifest } from "office-addin-manifest";
import { describe, expect, it } from "vitest";
import project from "../../package.json";
import { ribbonColours, ribbonPictures } from "../../shared/icons/ribbon";
import { pageAsked } from "../../src/pane/page";

const manifest = readFileSync("manifest.xml", "utf8");
const origin = "https://localhost:3000";
/** All addresses of ours, as paths in the build. The schemas' names are addresses of nobody's. */
const files = [...manifest.matchAll(/DefaultValue="(https:\/\/[^"]*)"/g)].map(([, address = ""]) => address);

/** Contrast of two colours, by WCAG 2.2, "relative luminance". */
function contrast(one: string, other: string): number {
  const luminance = (colour: string) => {
    const [red, green, blue] = [1, 3, 5].map((at) => {
      const part = parseInt(colour.slice(at, at + 2), 16) / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    }) as [number, number, number];
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

describe("manifest.xml", () => {
  it("is well formed, says xmllint", () => {
    execFileSync("xmllint", ["--noout", "manifest.xml"]);
  });

  it("is read by Microsoft's parser as a task pane for workbooks that asks to read and write, and no more", async () => {
    const info = await OfficeAddinManifest.readManifestFile("manifest.xml");
    expect(info).toMatchObject({
      displayName: "Pennyacre",
      officeAppType: "TaskPaneApp",
      permissions: "ReadWriteDocument",
      hosts: ["Workbook"],
      defaultSettings: { sourceLocation: `${origin}/pane.html` },
      version: `${project.version}.0`,
    });
    expect(info.id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  });

  it("asks for the least that shows a pane at all, so that an older Excel is told in words what it takes", () => {
    expect(manifest).toContain('<Set Name="ExcelApi" MinVersion="1.1"/>');
    expect(manifest.match(/<Set /g)).toHaveLength(1);
  });

  it("points only at files of the build, on one origin", () => {
    expect(files.length).toBeGreaterThan(5);
    for (const address of files) {
      expect(address.startsWith(`${origin}/`), address).toBe(true);
      expect(existsSync(`dist${new URL(address).pathname}`), address).toBe(true);
    }
  });

  it("has four buttons that open one and the same pane, each at a page that the pane knows", () => {
    const buttons = [...manifest.matchAll(/<Control xsi:type="Button"[\s\S]*?<\/Control>/g)].map(([text]) => text);
    const said = (id: string | undefined) => new RegExp(`id="${id}" DefaultValue="([^"]*)"`).exec(manifest)?.[1];
    expect(buttons.map((text) => said(/<Label resid="([^"]+)"/.exec(text)?.[1]))).toEqual([
      "Season costs",
      "Add a purchase",
      "Lender pages",
      "Help",
    ]);
    const pages = buttons.map((text) => new URL(said(/<SourceLocation resid="([^"]+)"/.exec(text)?.[1])!));
    expect(new Set(pages.map(({ pathname }) => pathname))).toEqual(new Set(["/pane.html"]));
    expect(pages.map(({ search }) => pageAsked(search))).toEqual(["season", "inputs", "lender", "help"]);
    // The name that Excel looks for where a workbook brings its pane along; it takes the first button that bears it.
    for (const text of buttons) expect(text).toContain("<TaskpaneId>Office.AutoShowTaskpaneWithDocument</TaskpaneId>");
  });

  it("gives each button a picture of its own in all sizes, named after its page and drawn in colours that stand out on any ribbon", () => {
    const address = (id: string) => new RegExp(`<bt:Image id="${id}" DefaultValue="([^"]*)"`).exec(manifest)?.[1];
    const pictures = [...manifest.matchAll(/<Control xsi:type="Button"[\s\S]*?<\/Control>/g)].map(([text]) =>
      [...text.matchAll(/<bt:Image size="(\d+)" resid="([^"]+)"/g)].map(([, size, id]) => `${size} ${new URL(address(id!)!).pathname}`),
    );
    const sizes = [16, 20, 24, 32, 40, 48, 64, 80];
    const pages = Object.keys(ribbonPictures);
    expect(pictures).toEqual(pages.map((page) => sizes.map((size) => `${size} /icons/${page}-${size}.png`)));
    for (const size of sizes) {
      const files = pages.map((page) => readFileSync(`dist/icons/${page}-${size}.png`));
      for (const file of files) expect([file.readUInt32BE(16), file.readUInt32BE(20)]).toEqual([size, size]);
      expect(new Set(files.map((file) => file.toString("base64"))).size).toBe(pages.length);
    }
    // WCAG 2.2, 1.4.11: three to one against what lies around, here the lightest and the darkest ribbon.
    for (const colour of [ribbonColours.copper, ribbonColours.slate])
      for (const ribbon of ["#ffffff", "#262626"]) expect(contrast(colour, ribbon), `${colour} on ${ribbon}`).toBeGreaterThanOrEqual(3);
  });

  it("says nothing longer than Excel takes", () => {
    const strings = (part: string) =>
      [...(new RegExp(`<bt:${part}>([\\s\\S]*)</bt:${part}>`).exec(manifest)?.[1] ?? "").matchAll(/DefaultValue="([^"]*)"/g)].map(
        ([, text]) => text!,
      );
    expect(strings("ShortStrings").length).toBeGreaterThan(4);
    for (const text of strings("ShortStrings")) expect(text.length, text).toBeLessThanOrEqual(125);
    for (const text of strings("LongStrings")) expect(text.length, text).toBeLessThanOrEqual(250);
  });

  it("sends whoever wants to know more to the help", () => {
    expect(manifest).toContain(`<SupportUrl DefaultValue="${origin}/help.html"/>`);
    expect(manifest).toContain(`<bt:Url id="Pennyacre.Help" DefaultValue="${origin}/help.html"/>`);
  });

  it("names a resource for every resid, and uses every resource", () => {
    const used = [...manifest.matchAll(/resid="([^"]+)"/g)].map(([, id]) => id);
    const defined = [...manifest.matchAll(/<bt:(?:Image|Url|String) id="([^"]+)"/g)].map(([, id]) => id);
    expect([...new Set(used)].sort()).toEqual([...defined].sort());
    // Excel takes no longer ones (Office add-in manifest reference, "resid").
    for (const id of defined) expect(id!.length).toBeLessThanOrEqual(32);
  });

  it.each([16, 20, 24, 32, 40, 48, 64, 80, 128])("has an icon of %i pixels that is as large as it says", (size) => {
    const icon = readFileSync(`dist/icons/icon-${size}.png`);
    expect(icon.subarray(1, 4).toString("latin1")).toBe("PNG");
    expect([icon.readUInt32BE(16), icon.readUInt32BE(20)]).toEqual([size, size]);
  });
});
