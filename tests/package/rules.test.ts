/** The rules that guard the cut of the source: each is broken once on purpose, in a small tree of its own, and must say so. */
import { mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { cruise, type ICruiseResult } from "dependency-cruiser";
import { Linter } from "eslint";
import tseslint from "typescript-eslint";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import lintRules from "../rules/eslint.config.js";
import importRules from "../rules/imports.js";

/** For each rule of imports a file that breaks it, and what it imports. */
const breaches: Readonly<Record<string, readonly [file: string, imports: string]>> = {
  "no-cycles": ["src/core/circleA.ts", "./circleB"],
  "core-alone": ["src/core/readsCells.ts", "../workbook/cell"],
  "one-decimal": ["src/workbook/ownDecimal.ts", "decimal.js"],
  "workbook-to-core": ["src/workbook/asksHost.ts", "../host/workbookHost"],
  "host-to-workbook": ["src/host/embedded/figures.ts", "../../core/money"],
  "hosts-apart": ["src/host/excel/borrows.ts", "../embedded/book"],
  "hosts-apart-too": ["src/host/embedded/borrows.ts", "../excel/start"],
  "port-only": ["src/pane/Card.ts", "../host/excel/start"],
  "no-excel-without-excel": ["src/desk/start.ts", "../host/excel/start"],
  "no-embedded-in-excel": ["src/pane/index.tsx", "../host/embedded/book"],
  "parts-below-pages": ["src/pane/parts/Line.ts", "../season/view"],
  "pane-below-desk": ["src/pane/Frame.ts", "../desk/grid"],
  "cli-without-pages": ["src/cli/reportCommand.ts", "../pane/format"],
  "no-tests-in-product": ["src/workbook/usesDemo.ts", "../../shared/demo/rows"],
  "published-through-workbook": ["src/pane/tables.ts", "../../shared/published/tables"],
  "no-office-library": ["src/host/excel/bundles.ts", "@microsoft/office-js"],
  "inside-the-project": ["src/core/reachesOut.ts", "../../../beside/figures"],
  found: ["src/core/lost.ts", "./nowhere"],
  "product-dependencies": ["src/desk/usesTool.ts", "fast-check"],
};
const plainFiles = [
  "src/workbook/cell.ts",
  "src/host/workbookHost.ts",
  "src/core/money.ts",
  "src/host/embedded/book.ts",
  "src/host/excel/start.ts",
  "src/desk/grid.ts",
  "src/pane/format.ts",
  "src/pane/season/view.ts",
  "shared/demo/rows.ts",
  "shared/published/tables.ts",
  "../beside/figures.ts",
];

const outer = mkdtempSync(join(tmpdir(), "pennyacre-rules-"));
const root = join(outer, "tree");
const put = (file: string, text: string) => {
  mkdirSync(dirname(join(root, file)), { recursive: true });
  writeFileSync(join(root, file), text);
};
let found: readonly string[] = [];

beforeAll(async () => {
  for (const file of plainFiles) put(file, "export const value = 1;\n");
  for (const [file, imports] of Object.values(breaches)) put(file, `import * as other from "${imports}";\nexport default other;\n`);
  put("src/workbook/readsTables.ts", 'import * as other from "../../shared/published/tables";\nexport default other;\n');
  put("src/pane/typesA.ts", 'import type { B } from "./typesB";\nexport type A = { readonly b: B | null };\n');
  put("src/pane/typesB.ts", 'import type { A } from "./typesA";\nexport type B = { readonly a: A | null };\n');
  put("src/core/circleB.ts", 'import * as other from "./circleA";\nexport default other;\n');
  put(
    "package.json",
    JSON.stringify({ dependencies: { "decimal.js": "*" }, devDependencies: { "fast-check": "*", "@microsoft/office-js": "*" } }),
  );
  symlinkSync(resolve("node_modules"), join(root, "node_modules"));
  const { options, forbidden } = importRules;
  const { output } = await cruise(["src"], {
    ...options,
    tsConfig: {},
    baseDir: root,
    enhancedResolveOptions: options.enhancedResolveOptions,
    validate: true,
    preserveSymlinks: true,
    ruleSet: { forbidden: forbidden as never },
  });
  found = (output as ICruiseResult).summary.violations.map(({ rule, from }) => `${rule.name}: ${from}`);
}, 60_000);
afterAll(() => rmSync(outer, { recursive: true }));

describe("the rules of imports", () => {
  it("have a breach here, each of them", () => {
    expect(Object.keys(breaches).sort()).toEqual(importRules.forbidden.map(({ name }) => name).sort());
  });

  it.each(Object.entries(breaches))("%s catches its breach", (name, [file]) => {
    expect(found).toContain(`${name}: ${file}`);
  });

  it("catch a circle of types alone", () => {
    expect(found).toContain("no-cycles: src/pane/typesA.ts");
  });

  it("let the workbook's code read what was published", () => {
    expect(found.filter((each) => each.endsWith("src/workbook/readsTables.ts"))).toEqual([]);
  });
});

/** Messages of the rules of this project that need no types; the others are the linter's own and have their own tests. */
function complaints(filename: string, code: string): readonly string[] {
  const config = (lintRules as Linter.Config[])
    .filter(({ files }) => files !== undefined)
    .map((each) => ({
      ...each,
      languageOptions: { parser: tseslint.parser as Linter.Parser },
      rules: Object.fromEntries(Object.entries(each.rules ?? {}).filter(([name]) => name.startsWith("no-restricted-"))),
    }));
  return new Linter({ cwd: process.cwd() }).verify(code, config, { filename }).map(({ message }) => message);
}

describe("the rules of lint", () => {
  it.each([
    ["Number(text)", "const a = Number('1');"],
    ["parseFloat", "const a = parseFloat('1');"],
    ["toNumber", "const a = price.toNumber();"],
    ["Math", "const a = Math.max(b, c);"],
    ["a leading plus", "const a = +text;"],
    ["a fraction as a literal", "const a = new Decimal(0.1);"],
    ["number in a signature", "export const a = (price: number) => price;"],
  ])("keep %s out of the core", (_what, code) => {
    expect(complaints("src/core/breach.ts", code)).toHaveLength(1);
    expect(complaints("src/pane/breach.ts", code)).toHaveLength(0);
  });

  it("let the core index a list of words by number in types", () => {
    expect(complaints("src/core/kinds.ts", "type Kind = (typeof kinds)[number];")).toHaveLength(0);
  });

  it.each(["Excel.run(go);", "Office.onReady();", "type A = Excel.Range;"])("keep %s to the Excel host", (code) => {
    expect(complaints("src/pane/breach.ts", code)).toHaveLength(1);
    expect(complaints("src/host/excel/fine.ts", code)).toHaveLength(0);
  });

  it.each(["src/core/breach.ts", "src/workbook/breach.ts", "src/pane/breach.tsx", "src/host/excel/breach.ts"])(
    "keep look-behind out of regular expressions in %s",
    (file) => {
      expect(complaints(file, "const a = /(?<=x)es$/; const b = new RegExp(`(?<![0-9])${a}`); const c = /(?<year>a)(?=b)/;")).toHaveLength(
        2,
      );
    },
  );

  it("keep scrollIntoView out of the pages, which moves where the next Tab begins", () => {
    for (const file of ["src/desk/breach.tsx", "src/pane/breach.tsx"])
      expect(complaints(file, "tab?.scrollIntoView({ block: 'nearest' });")).toHaveLength(1);
  });
});

describe("the names of modules", () => {
  /** Paths that an import could take for each other on a disk that does not tell capitals apart. */
  const alike = (paths: readonly string[]) => {
    const modules = paths.filter((path) => /\.tsx?$/.test(path)).map((path) => path.replace(/\.tsx?$/, "").toLowerCase());
    return modules.filter((path, at) => modules.indexOf(path) !== at);
  };

  it("differ by more than capitals", () => {
    expect(alike(["pane/Sheets.tsx", "pane/sheets.ts", "pane/sheets.test.ts", "desk/sheets.ts"])).toEqual(["pane/sheets"]);
    expect(
      alike(
        ["src", "tests"].flatMap((folder) => readdirSync(folder, { recursive: true, encoding: "utf8" }).map((path) => `${folder}/${path}`)),
      ),
    ).toEqual([]);
  });
});
