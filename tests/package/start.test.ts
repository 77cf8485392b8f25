/** The README's first command, on a machine where its usual port is taken: the desk and the demo are served all the same. */
import { spawn } from "node:child_process";
import { createServer, get } from "node:http";
import { expect, it } from "vitest";

it("npm start serves the desk with the demo season on the next free port, and icons to Excel on the web", async () => {
  const other = createServer((_, response) => response.end("somebody else"));
  // Where something else has the port already, that serves as well.
  await new Promise<void>((done) => other.once("error", () => done()).listen(3000, "localhost", done));
  const started = spawn("npm", ["start"], { detached: true, stdio: ["ignore", "pipe", "inherit"] });
  try {
    const address = await new Promise<string>((found, failed) => {
      let said = "";
      started.stdout.on("data", (text: Buffer) => {
        said += text.toString("utf8");
        const [, named] = /Pennyacre is at (http:\/\/localhost:\d+\/)/.exec(said) ?? [];
        if (named !== undefined) found(named);
      });
      started.once("exit", (code) => failed(new Error(`npm start ended with ${code}: ${said}`)));
    });
    expect(address).not.toBe("http://localhost:3000/");
    const page = await (await fetch(address)).text();
    expect(page).toContain("<title>Pennyacre</title>");
    const [, program = ""] = /<script[^>]* src="([^"]+)"/.exec(page) ?? [];
    expect((await fetch(new URL(program, address))).status).toBe(200);
    const demo = new Uint8Array(await (await fetch(new URL("demo-season.xlsx", address))).arrayBuffer());
    expect([...demo.subarray(0, 2)]).toEqual([0x50, 0x4b]);

    // As a picture in a page of somebody else's, which Excel on the web is: icons are for everybody, workbooks are not.
    const fromElsewhere = (file: string) =>
      new Promise<{ readonly status: number | undefined; readonly policy: unknown }>((answered, failed) => {
        const headers = { "sec-fetch-mode": "no-cors", "sec-fetch-site": "cross-site" };
        get(new URL(file, address), { headers }, (response) => {
          response.resume();
          answered({ status: response.statusCode, policy: response.headers["cross-origin-resource-policy"] });
        }).once("error", failed);
      });
    expect(await fromElsewhere("icons/icon-32.png")).toEqual({ status: 200, policy: undefined });
    expect((await fromElsewhere("demo-season.xlsx")).status).toBe(403);
  } finally {
    // The whole group: npm, its shell and the server.
    if (started.pid !== undefined && started.exitCode === null) process.kill(-started.pid);
    other.close();
  }
}, 170_000);

it("npm run start:excel says in plain words that its port is taken, which the manifest names", async () => {
  const other = createServer((_, response) => response.end("somebody else"));
  await new Promise<void>((done) => other.once("error", () => done()).listen(3000, "localhost", done));
  const started = spawn("npm", ["run", "start:excel"], { stdio: ["ignore", "pipe", "pipe"] });
  let said = "";
  for (const stream of [started.stdout, started.stderr]) stream.on("data", (text: Buffer) => (said += text.toString("utf8")));
  const code = await new Promise((ended) => started.once("exit", ended));
  other.close();
  expect(code).not.toBe(0);
  expect(said).toContain("Port 3000 is taken, perhaps by an earlier start. manifest.xml names it, so stop that first and start again.");
}, 170_000);
