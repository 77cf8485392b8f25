/** What the compiler says of the code with one mutation in it: `npm test` checks the types before it runs a test. */
import ts from "typescript";
import { resolve } from "node:path";
import { codeOf, mutated, type Mutation } from "./mutations";

type Checked = ts.SemanticDiagnosticsBuilderProgram;

/** A function that says whether the compiler refuses a mutation. Reading all of the code once takes it some twenty seconds. */
export function compiler(): (mutation: Mutation) => boolean {
  const { options, fileNames } = ts.parseJsonConfigFileContent(ts.readConfigFile("tsconfig.json", ts.sys.readFile).config, ts.sys, ".");
  let changed: { readonly file: string; readonly text: string } | null = null;
  const host = ts.createIncrementalCompilerHost({ ...options, incremental: true, tsBuildInfoFile: ".tmp/none.json" });
  const read = host.readFile.bind(host);
  host.readFile = (file) => (changed !== null && resolve(file) === changed.file ? changed.text : read(file));
  const sources = new Map<string, ts.SourceFile | undefined>();
  const source = host.getSourceFile.bind(host);
  host.getSourceFile = (file, ...how) => {
    if (changed !== null && resolve(file) === changed.file) return source(file, ...how);
    if (!sources.has(file)) sources.set(file, source(file, ...how));
    return sources.get(file);
  };
  const program = (before?: Checked): Checked => ts.createSemanticDiagnosticsBuilderProgram(fileNames, options, host, before);
  /** Whether anything that a change reaches is refused. */
  const refused = (checked: Checked): boolean => {
    for (;;) {
      const next = checked.getSemanticDiagnosticsOfNextAffectedFile();
      if (next === undefined) return false;
      if (next.result.length > 0) return true;
    }
  };
  const sound = program();
  if (refused(sound)) throw new Error("the compiler refuses the code as it is");
  return (mutation) => {
    const file = resolve(codeOf(mutation));
    changed = { file, text: mutated(read(file)!, mutation) };
    const next = program(sound);
    return next.getSyntacticDiagnostics(next.getSourceFile(file)).length > 0 || refused(next);
  };
}
