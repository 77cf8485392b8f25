/** The laws that hold for random cases, and how many of them each run looks at, as they stand in the tests. */
import { readdirSync, readFileSync } from "node:fs";
import ts from "typescript";

export type Law = {
  readonly file: string;
  readonly title: string;
  /** How many cases: a number, or the words for those of a judge. */
  readonly runs: string;
  readonly isJudge: boolean;
};

/** What fast-check looks at where no number is given. */
const usual = "100";

const testFiles = (): readonly string[] =>
  ["src", "tests"]
    .flatMap((folder) =>
      readdirSync(folder, { recursive: true, encoding: "utf8" }).map((file) => `${folder}/${file.replaceAll("\\", "/")}`),
    )
    .filter((file) => /\.test\.tsx?$/.test(file))
    .sort();

const textOf = (node: ts.Node | undefined): string =>
  node !== undefined && ts.isStringLiteralLike(node) ? node.text : (node?.getText() ?? "").replace(/^`|`$/g, "");

/** `describe` and `it` around a call, from outside in. */
function titlesAround(node: ts.Node): readonly string[] {
  if (node.parent === undefined) return [];
  const outer = titlesAround(node.parent);
  if (!ts.isCallExpression(node)) return outer;
  const name = /^(describe|it|test)\b/.exec(node.expression.getText());
  return name === null || !ts.isStringLiteralLike(node.arguments[0] ?? node) ? outer : [...outer, textOf(node.arguments[0])];
}

function runsOf(call: ts.CallExpression): string {
  const options = call.arguments[1];
  if (options === undefined || !ts.isObjectLiteralExpression(options)) return usual;
  const asked = options.properties.find((each) => each.name?.getText() === "numRuns");
  if (asked === undefined) return usual;
  return ts.isPropertyAssignment(asked) ? asked.initializer.getText().replaceAll("_", "") : "as many as the run asks for";
}

export function laws(): readonly Law[] {
  const found: Law[] = [];
  for (const file of testFiles()) {
    const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true);
    const visit = (node: ts.Node): void => {
      if (ts.isCallExpression(node)) {
        const called = node.expression.getText();
        if (called === "fc.assert") found.push({ file, title: titlesAround(node).join(": "), runs: runsOf(node), isJudge: false });
        if (called === "judge")
          found.push({
            file,
            title: textOf(node.arguments[0]),
            runs: node.arguments[3]?.getText() ?? "500; 10,000 in a long run",
            isJudge: true,
          });
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return found;
}
