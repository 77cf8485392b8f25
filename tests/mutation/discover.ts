/** All mutations that the tool knows of the code, asked of it over its own protocol. */
import { spawn } from "node:child_process";
import type { Mutation } from "./mutations";

type Discovered = { readonly files: Readonly<Record<string, { readonly mutants: readonly Omit<Mutation, "fileName">[] }>> };

const mutationTool = "node_modules/@stryker-mutator/core/bin/stryker.js";

const packed = (id: number, method: string, params: unknown): string => {
  const text = JSON.stringify({ jsonrpc: "2.0", id, method, params });
  return `Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`;
};

export async function discovered(): Promise<readonly Mutation[]> {
  const tool = spawn(process.execPath, [mutationTool, "serve", "stdio"], { stdio: ["pipe", "pipe", "inherit"] });
  try {
    const answer = new Promise<Discovered>((found, failed) => {
      let told = Buffer.alloc(0);
      tool.on("error", failed);
      tool.on("exit", (code) => failed(new Error(`the mutation tool ended with ${code} before it had answered`)));
      tool.stdout.on("data", (bytes: Buffer) => {
        told = Buffer.concat([told, bytes]);
        for (;;) {
          const head = /^[\s\S]*?Content-Length: (\d+)\r\n\r\n/.exec(told.toString("latin1"));
          if (head === null || told.length < head[0].length + Number(head[1])) return;
          const text = told.subarray(head[0].length, head[0].length + Number(head[1])).toString("utf8");
          told = told.subarray(head[0].length + Number(head[1]));
          const { id, result, error } = JSON.parse(text) as { id: number; result?: Discovered; error?: { message: string } };
          if (error !== undefined) failed(new Error(error.message));
          else if (id === 2) found(result!);
        }
      });
    });
    tool.stdin.write(packed(1, "configure", { configFilePath: "tests/mutation/stryker.config.js" }));
    tool.stdin.write(packed(2, "discover", {}));
    const { files } = await answer;
    return Object.entries(files).flatMap(([fileName, { mutants }]) =>
      mutants.map(({ location, mutatorName, replacement }) => ({ fileName, location, mutatorName, replacement })),
    );
  } finally {
    tool.kill();
  }
}
