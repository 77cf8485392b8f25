/** Code that notes, as it runs, which places of mutations it passes through. */
import ts from "typescript";
import { offsetOf, type Mutation } from "./mutations";

/** The innermost function around a place, or `null` outside of every function: what runs as the module is read. */
function functionAround(file: ts.SourceFile, start: number, end: number): ts.FunctionLikeDeclaration | null {
  let found: ts.FunctionLikeDeclaration | null = null;
  const look = (node: ts.Node): void => {
    if (node.getStart(file) > start || node.end < end) return;
    // A mutation of a whole function, or of its parameters, is met where the function itself is made.
    const { body } = node as ts.FunctionLikeDeclaration;
    if (ts.isFunctionLike(node) && body !== undefined && body.getStart(file) <= start && body.end >= end)
      found = node as ts.FunctionLikeDeclaration;
    ts.forEachChild(node, look);
  };
  look(file);
  return found;
}

/** The code with a note in each function in which a mutation stands; each mutation comes with its number. */
export function noting(fileName: string, text: string, mutations: readonly (readonly [number, Mutation])[]): string {
  const file = ts.createSourceFile(fileName, text, ts.ScriptTarget.Latest, true);
  const note = (numbers: readonly number[]) =>
    numbers.map((number) => `(globalThis.passedThrough ??= new Set()).add(${number})`).join(", ");
  const around = new Map<ts.FunctionLikeDeclaration | null, number[]>();
  for (const [number, { location }] of mutations) {
    const place = functionAround(file, offsetOf(text, location.start), offsetOf(text, location.end));
    around.set(place, [...(around.get(place) ?? []), number]);
  }
  const put: { at: number; text: string }[] = [];
  for (const [place, numbers] of around) {
    const body = place?.body;
    if (body === undefined) put.push({ at: text.length, text: `\n;${note(numbers)};` });
    else if (ts.isBlock(body)) put.push({ at: body.getStart(file) + 1, text: `${note(numbers)};` });
    else put.push({ at: body.getStart(file), text: `(${note(numbers)}, ` }, { at: body.end, text: ")" });
  }
  let noted = text;
  for (const each of put.sort((one, other) => other.at - one.at)) noted = noted.slice(0, each.at) + each.text + noted.slice(each.at);
  return noted;
}
