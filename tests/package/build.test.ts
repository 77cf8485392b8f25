/** What `npm run build` made: `npm test` builds before it runs this. */
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { Linter } from "eslint";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const page = (name: string) => readFileSync(`dist/${name}`, "utf8");
const scripts = (html: string) => [...html.matchAll(/<script[^>]* src="([^"]+)"/g)].map(([, source = ""]) => source);
const officeLibrary = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

/** What a reader of the language's edition of 2009 complains of. */
const oldComplaints = (code: string): readonly string[] =>
  new Linter({ cwd: process.cwd() })
    .verify(code, [{ languageOptions: { ecmaVersion: 5, sourceType: "script" } }], { allowInlineConfig: false })
    .map(({ message, line, column }) => `${line}:${column} ${message}`);

const newerMethods = /^(toSorted|toReversed|toSpliced|isWellFormed|toWellFormed|withResolvers|fromAsync|canParse)$/;

/** Whether a program asks whether a method is there, as libraries do that have another way. */
const asksFirst = (code: string, method: string): boolean => new RegExp(`typeof [\\w$.]+\\.${method}\\b`).test(code);

/** What of a program is newer than Safari 15.4: it stops the pane there before it starts, or as it comes to it. */
function newerParts(code: string): readonly string[] {
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isClassStaticBlockDeclaration(node)) found.push("static block");
    if (ts.isRegularExpressionLiteral(node) && /\(\?<[=!]|\/[a-z]*v[a-z]*$/.test(node.text)) found.push(node.text);
    if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      const method = node.expression.name.text;
      if (newerMethods.test(method) && !asksFirst(code, method)) found.push(method);
    }
    ts.forEachChild(node, look);
  };
  look(ts.createSourceFile("program.js", code, ts.ScriptTarget.Latest));
  return found;
}

describe("the build", () => {
  it("loads Office.js in the pane, from Microsoft and before our own program", () => {
    const [first, ...others] = scripts(page("pane.html"));
    expect(first).toBe(officeLibrary);
    expect(others.length).toBeGreaterThan(0);
    for (const source of others) expect(source).not.toMatch(/^https?:/);
  });

  it("looks first whether this Excel can run the pane, in the oldest language, and names that program in its policy", () => {
    const html = page("pane.html");
    const [check = ""] = [...html.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(([, text]) => text!);
    expect(html.indexOf(check)).toBeLessThan(html.indexOf(officeLibrary));
    expect(html).toContain(`script-src 'self' 'sha256-${createHash("sha256").update(check).digest("base64")}' https:`);
    expect(oldComplaints(check)).toEqual([]);
    expect(oldComplaints("const a = (b) => b;")).toHaveLength(1);
  });

  it("has nothing that the oldest browsers of a Mac's panes cannot read", () => {
    const programs = readdirSync("dist").filter((name) => name.endsWith(".js"));
    expect(programs.length).toBeGreaterThan(10);
    for (const name of programs) {
      expect(page(name), name).not.toMatch(/\(\?<[=!]/);
      expect(newerParts(page(name)), name).toEqual([]);
    }
    // The check itself: what came with Safari 16.4 and later is told.
    for (const code of ["class A { static { go(); } }", "a = /(?<=x)y/;", "b.toSorted();", "a = /x/v;"])
      expect(newerParts(code), code).toHaveLength(1);
    expect(newerParts("typeof URL.canParse == 'function' ? URL.canParse(e) : go(e);")).toEqual([]);
  });

  it("never loads Office.js in the desk, nor anything else from elsewhere", () => {
    const sources = scripts(page("index.html"));
    expect(sources.length).toBeGreaterThan(0);
    for (const source of sources) expect(source).not.toMatch(/^(https?:)?\/\//);
    for (const source of sources) expect(page(source)).not.toContain("appsforoffice");
  });

  it("loads nothing from elsewhere in the install page, which asks nobody but its own server", () => {
    const sources = scripts(page("install.html"));
    expect(sources).toHaveLength(1);
    expect(sources[0]).toMatch(/^install\.[0-9a-f]{12}\.js$/);
    expect(/http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(page("install.html"))?.[1]).toMatch(
      /^default-src 'none'; script-src 'self'; connect-src 'self'; /,
    );
  });

  it("keeps scripts of elsewhere, eval and plugins out of both pages by policy", () => {
    for (const name of ["index.html", "pane.html"]) {
      const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(page(name))?.[1] ?? "";
      expect(policy, name).toContain("default-src 'self'");
      expect(policy, name).toContain("object-src 'none'");
      expect(policy, name).not.toContain("'unsafe-eval'");
      expect(/script-src ([^;]*)/.exec(policy)?.[1], name).not.toMatch(/'unsafe-inline'|\*(?!\.)/);
    }
  });

  it("names its programs after their content, so that nobody keeps an old version", () => {
    for (const name of ["index.html", "pane.html"]) {
      for (const source of scripts(page(name)).filter((each) => each !== officeLibrary)) expect(source).toMatch(/\.[0-9a-f]{12}\.js$/);
    }
  });

  it("holds the demo workbooks and the engine that recalculates them", () => {
    const files = readdirSync("dist");
    expect(files).toEqual(expect.arrayContaining(["demo-season.xlsx", "demo-season-with-problems.xlsx"]));
    expect(files.filter((name) => name.endsWith(".wasm"))).toHaveLength(1);
  });

  it("holds the help as a page that needs no program and nothing from elsewhere", () => {
    const html = page("help.html");
    expect(html).toContain("<h1>Pennyacre: help</h1>");
    expect(html).not.toMatch(/(https?:)?\/\/[a-z]/i);
    expect(html).not.toMatch(/<script|javascript:|\son[a-z]+=|@import/i);
    expect(/http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1]).toMatch(
      /^default-src 'none'; style-src 'unsafe-inline'; img-src 'self'; /,
    );
    for (const [, file = ""] of html.matchAll(/(?:src|href)="([^"#]+)"/g)) expect(existsSync(`dist/${file}`), file).toBe(true);
  });

  it("keeps the pane light enough to open over a farm's line: under 250 KB compressed, without the source map", () => {
    const size = scripts(page("pane.html"))
      .filter((each) => each !== officeLibrary)
      .reduce((sum, source) => sum + gzipSync(readFileSync(`dist/${source}`)).length, 0);
    expect(size).toBeLessThan(250 * 1024);
    expect(statSync("dist/pane.html").size).toBeLessThan(8 * 1024);
  });
});
