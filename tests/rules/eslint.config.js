/** Lint rules: the compiler's neighbours that catch real faults, and the few rules of this project that lint can hold. */
import { fileURLToPath } from "node:url";
import reactHooks from "eslint-plugin-react-hooks";
import tseslint from "typescript-eslint";

const officeGlobals = ["Excel", "Office", "OfficeExtension", "CustomFunctions"].map((name) => ({
  name,
  message: "Only src/host/excel knows Office; go through WorkbookHost.",
}));

/** The same for types, which are no globals to the linter. */
const officeTypes = [
  {
    selector: "TSQualifiedName > Identifier.left[name=/^(Excel|Office|OfficeExtension|CustomFunctions)$/]",
    message: "Only src/host/excel knows Office; go through WorkbookHost.",
  },
];

/** Binary floating point, which has no place in the calculation core. */
const decimalsOnly = [
  { selector: "CallExpression[callee.name=/^(parseFloat|parseInt|Number)$/]", message: "The core counts in decimals only." },
  { selector: "MemberExpression[object.name='Number']", message: "The core counts in decimals only." },
  { selector: "MemberExpression[property.name='toNumber']", message: "The core counts in decimals only." },
  { selector: "MemberExpression[object.name='Math']", message: "The core counts in decimals only." },
  { selector: "UnaryExpression[operator='+']", message: "The core counts in decimals only." },
  { selector: "Literal[raw=/^[0-9.]*\\.[0-9]|^[0-9.]+e/i]", message: 'Write a decimal constant as text: new Decimal("0.1").' },
  { selector: ":not(TSIndexedAccessType) > TSNumberKeyword", message: "A quantity in the core is a Decimal with its unit." },
];

/** In some browsers it moves the place where the next Tab begins, and it scrolls what is around the box too. */
const noScrollIntoView = [
  {
    selector: "MemberExpression[property.name='scrollIntoView']",
    message: "Scroll the box itself (src/desk/scrolledTo.ts): scrollIntoView moves where the next Tab begins.",
  },
];

/** A regular expression that looks behind stops the pane before it starts in the browser part of Excel on older Macs. */
const noLookBehind = [
  {
    selector: "Literal[regex.pattern=/\\(\\?<[=!]/], TemplateElement[value.raw=/\\(\\?<[=!]/]",
    message: "No look-behind in a regular expression: Excel on older Macs cannot start with it.",
  },
];

export default tseslint.config(
  { ignores: ["dist/", "node_modules/", "coverage/", ".tmp/", ".dependency-cruiser-cache/"] },
  {
    files: ["**/*.{ts,tsx}"],
    extends: [tseslint.configs.strict],
    languageOptions: { parserOptions: { project: "./tsconfig.json", tsconfigRootDir: fileURLToPath(new URL("../..", import.meta.url)) } },
    linterOptions: { reportUnusedDisableDirectives: "error" },
    plugins: { "react-hooks": reactHooks },
    rules: {
      "@typescript-eslint/no-floating-promises": "error",
      "@typescript-eslint/no-misused-promises": ["error", { checksVoidReturn: { attributes: false } }],
      "@typescript-eslint/await-thenable": "error",
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
      // A name that the reader has matched is in the map; `!` says so, and noUncheckedIndexedAccess makes us say it.
      "@typescript-eslint/no-non-null-assertion": "off",
      "@typescript-eslint/no-extraneous-class": "off",
      // The compiler finds what is not used (noUnusedLocals, noUnusedParameters).
      "@typescript-eslint/no-unused-vars": "off",
      "@typescript-eslint/no-invalid-void-type": ["error", { allowAsThisParameter: true }],
      "react-hooks/rules-of-hooks": "error",
      "react-hooks/exhaustive-deps": "error",
      "no-restricted-globals": ["error", ...officeGlobals],
      "no-restricted-syntax": ["error", ...officeTypes, ...noScrollIntoView, ...noLookBehind],
      "no-console": ["error", { allow: ["error"] }],
      // The formatter breaks code; text that must stand on one line (a table in a test, a file's XML, a pattern) may be longer.
      "max-len": ["error", { code: 140, ignoreTemplateLiterals: true, ignoreRegExpLiterals: true }],
      "no-eval": "error",
      eqeqeq: "error",
    },
  },
  { files: ["src/host/excel/**"], rules: { "no-restricted-globals": "off", "no-restricted-syntax": ["error", ...noLookBehind] } },
  {
    files: ["src/core/**/*.ts"],
    ignores: ["**/*.test.ts"],
    rules: { "no-restricted-syntax": ["error", ...officeTypes, ...decimalsOnly, ...noLookBehind] },
  },
  // Scripts and tests may print.
  { files: ["tests/**", "shared/**"], rules: { "no-console": "off", "no-restricted-globals": "off", "no-restricted-syntax": "off" } },
);
