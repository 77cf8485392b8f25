/**
 * Which part may import which (dependency-cruiser). The roads run one way:
 *
 *   pane, desk, cli  ->  host (the port)  and  workbook  ->  core
 *
 * A host's implementation is brought in only by the page or program that starts it.
 */
const tests = "\\.(test|typetest)\\.tsx?$";
/** @type {(name: string, comment: string, from: object, to: object) => { name: string, comment: string, severity: string, from: object, to: object }} */
const rule = (name, comment, from, to) => ({ name, comment, severity: "error", from, to });

export default {
  forbidden: [
    rule(
      "no-cycles",
      "Two modules that need each other, if only for a type, are one module, or three.",
      { path: "^(src|tests|shared)/" },
      { circular: true },
    ),
    rule(
      "core-alone",
      "The core uses only itself, result.ts and decimal.js.",
      { path: "^src/core/", pathNot: tests },
      { pathNot: ["^src/core/", "^src/result\\.ts$", "^node_modules/decimal\\.js/"] },
    ),
    rule(
      "one-decimal",
      "decimal.js comes in through core/numbers/decimal.ts, which sets precision and rounding once.",
      { path: "^src/", pathNot: "^src/core/numbers/decimal\\.ts$" },
      { path: "^node_modules/decimal\\.js/" },
    ),
    rule(
      "workbook-to-core",
      "What our tables mean needs no host, no page and no React.",
      { path: "^src/workbook/", pathNot: tests },
      { path: ["^src/(host|pane|desk|cli)/", "^node_modules/"] },
    ),
    rule(
      "host-to-workbook",
      "A host carries cells; it knows neither pages nor figures.",
      { path: "^src/host/", pathNot: tests },
      { path: "^src/(core|pane|desk|cli)/" },
    ),
    rule(
      "hosts-apart",
      "The two hosts do not know each other.",
      { path: "^src/host/excel/", pathNot: tests },
      { path: "^src/host/embedded/" },
    ),
    rule(
      "hosts-apart-too",
      "The two hosts do not know each other.",
      { path: "^src/host/embedded/", pathNot: tests },
      { path: "^src/host/excel/" },
    ),
    rule(
      "port-only",
      "The pane sees the port, never an implementation; only the page in Excel starts Excel's.",
      { path: "^src/(pane)/", pathNot: [tests, "^src/pane/index\\.tsx$"] },
      { path: "^src/host/(excel|embedded)/" },
    ),
    rule(
      "no-excel-without-excel",
      "The desk and the command line run without Excel.",
      { path: "^src/(desk|cli)/", pathNot: tests },
      { path: "^src/host/excel/" },
    ),
    rule(
      "no-embedded-in-excel",
      "The page in Excel starts Excel's host only; it may make the file of a new workbook.",
      { path: "^src/pane/index\\.tsx$" },
      { path: "^src/host/embedded/(?!package/filledWorkbook\\.ts$)" },
    ),
    rule(
      "parts-below-pages",
      "What several pages are put together from knows none of them.",
      { path: "^src/pane/parts/", pathNot: tests },
      { path: "^src/pane/(?!parts/|commands/)[^/]+/" },
    ),
    rule(
      "pane-below-desk",
      "The desk shows the pane, not the other way round, and the command line shows neither.",
      { path: "^src/(pane|cli)/", pathNot: tests },
      { path: "^src/desk/" },
    ),
    rule(
      "cli-without-pages",
      "The command line needs no page.",
      { path: "^src/(cli)/", pathNot: tests },
      { path: ["^src/(pane|desk)/", "^node_modules/(react|@fluentui)"] },
    ),
    rule(
      "no-tests-in-product",
      "The product does not need its tests, nor the demo's sources.",
      { path: "^src/", pathNot: tests },
      { path: ["^tests/", "^shared/(?!published/)"] },
    ),
    rule(
      "published-through-workbook",
      "Published tables are read by the workbook's code, which hands them to the core in decimals.",
      { path: "^src/", pathNot: [tests, "^src/workbook/"] },
      { path: "^shared/published/" },
    ),
    rule(
      "no-office-library",
      "Office.js comes from Microsoft at run time; its library is here for tests alone.",
      { path: "^(src|shared)/", pathNot: tests },
      { path: "^(node_modules/)?@microsoft/office-js" },
    ),
    rule("inside-the-project", "Nothing reads files beside the project.", {}, { path: "^\\.\\./", couldNotResolve: false }),
    rule("found", "Every import leads somewhere.", {}, { couldNotResolve: true }),
    rule(
      "product-dependencies",
      "What the product needs is listed under dependencies.",
      { path: "^src/", pathNot: tests },
      { dependencyTypes: ["npm-dev"], pathNot: "^node_modules/@types/" },
    ),
  ],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    doNotFollow: { path: "node_modules" },
    enhancedResolveOptions: {
      extensions: [".ts", ".tsx", ".js", ".json", ".css"],
      exportsFields: ["exports"],
      conditionNames: ["import", "node", "default"],
    },
  },
};
