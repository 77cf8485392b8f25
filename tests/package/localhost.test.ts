/** The certificate for serving Excel from this machine, read by Node's own X.509 and tried by a connection. */
import { execFileSync } from "node:child_process";
import { createPrivateKey, X509Certificate } from "node:crypto";
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from "node:fs";
import { createServer, get } from "node:https";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { certificateIn } from "../../shared/build/localhost.js";

const day = 86_400_000;
let folder: string;
beforeEach(() => {
  folder = join(mkdtempSync(join(tmpdir(), "pennyacre-localhost-")), "kept");
});
afterEach(() => rmSync(join(folder, ".."), { recursive: true }));
const read = (file: string) => new X509Certificate(readFileSync(file));

it("speaks for this machine alone, for a year, and can vouch for no other", async () => {
  const { cert, key, isNew } = await certificateIn(folder);
  expect(isNew).toBe(true);
  const made = read(cert);
  expect(made.ca).toBe(false);
  expect(made.subjectAltName).toBe("DNS:localhost, IP Address:127.0.0.1, IP Address:0:0:0:0:0:0:0:1");
  expect(made.keyUsage).toEqual(["1.3.6.1.5.5.7.3.1"]); // serverAuth (RFC 5280, 4.2.1.12)
  expect(made.checkPrivateKey(createPrivateKey(readFileSync(key)))).toBe(true);
  const days = (Date.parse(made.validTo) - Date.parse(made.validFrom)) / day;
  // Apple: "About upcoming limits on trusted certificates", 398 days at most.
  expect(days).toBeGreaterThan(360);
  expect(days).toBeLessThan(398);
  if (process.platform !== "win32") expect(statSync(key).mode & 0o077).toBe(0);
});

it("stays the same until it has almost run out, or is not whole", async () => {
  const first = await certificateIn(folder);
  const bytes = readFileSync(first.cert, "utf8");
  expect((await certificateIn(folder)).isNew).toBe(false);
  expect(readFileSync(first.cert, "utf8")).toBe(bytes);
  expect((await certificateIn(folder, Date.now() + 300 * day)).isNew).toBe(false);
  expect((await certificateIn(folder, Date.now() + 355 * day)).isNew).toBe(true);
  expect(readFileSync(first.cert, "utf8")).not.toBe(bytes);
  rmSync(first.key);
  expect((await certificateIn(folder)).isNew).toBe(true);
});

it("is accepted by whoever trusts it, and by nobody else", async () => {
  const { cert, key } = await certificateIn(folder);
  const server = createServer({ cert: readFileSync(cert), key: readFileSync(key) }, (_, response) => response.end("the pane"));
  await new Promise<void>((listening) => server.listen(0, "localhost", listening));
  const { port } = server.address() as AddressInfo;
  const asked = (ca: string | undefined) =>
    new Promise<string>((answered) => {
      get({ host: "localhost", port, ...(ca !== undefined && { ca }) }, (response) => {
        response.setEncoding("utf8").once("data", answered);
      }).once("error", ({ message }) => answered(message));
    });
  try {
    expect(await asked(readFileSync(cert, "utf8"))).toBe("the pane");
    expect(await asked(undefined)).toMatch(/self.signed/);
  } finally {
    server.closeAllConnections();
    server.close();
  }
});

it("is not kept where installing packages anew throws things away, nor in the repository", () => {
  expect(readFileSync("webpack.config.js", "utf8")).toContain('certificateIn(here(".localhost"))');
  expect(readFileSync(".gitignore", "utf8").split("\n")).toContain(".localhost/");
});

// Whoever trusts a certificate trusts everybody who has its key, so a key that comes with the source is nobody's.
it.skipIf(!existsSync(".git"))("is in no clone of the repository, and neither is anything else that is to be ignored", () => {
  const tracked = execFileSync("git", ["ls-files", "--cached", "--ignored", "--exclude-standard"], { encoding: "utf8" });
  expect(tracked.split("\n").filter(Boolean)).toEqual([]);
  const names = execFileSync("git", ["ls-files"], { encoding: "utf8" }).split("\n");
  expect(names.filter((name) => /\.(key|pem|crt|p12|pfx)$/.test(name))).toEqual([]);
});
