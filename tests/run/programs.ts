/** The programs outside npm that tests use: found, or installed where this machine lets us, or named plainly as missing. */
import { spawnSync } from "node:child_process";
import { accessSync, constants, existsSync } from "node:fs";
import { delimiter, join } from "node:path";

type Program = {
  readonly name: string;
  /** Any one of these serves: a name on the PATH or a whole path. */
  readonly commands: readonly string[];
  /** What Debian calls the package. */
  readonly debian: string;
  readonly use: string;
};

const programs: readonly Program[] = [
  {
    name: "Chromium", debian: "chromium", use: "the pages are tested in it",
    // The same places where tests/support/browser.ts looks.
    commands: ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"],
  },
  { name: "LibreOffice Calc", debian: "libreoffice-calc", use: "it recalculates and prints the workbooks", commands: ["soffice", "libreoffice"] },
  { name: "pdftoppm", debian: "poppler-utils", use: "it turns printed pages into pictures and text", commands: ["pdftoppm"] },
  { name: "xmllint", debian: "libxml2-utils", use: "it checks the manifest", commands: ["xmllint"] },
];

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    // Not there, or not for us to run: both mean that it is no program here.
    return false;
  }
}

const onPath = (command: string): boolean =>
  command.includes("/") ? isProgram(command) : (process.env["PATH"] ?? "").split(delimiter).some((folder) => isProgram(join(folder, command)));

function isThere({ name, commands }: Program): boolean {
  const named = name === "Chromium" ? process.env["CHROMIUM_PATH"] : undefined;
  return named === undefined ? commands.some(onPath) : isProgram(named);
}

const missing = (): readonly Program[] => programs.filter((program) => !isThere(program));

function aptGet(...words: readonly string[]): boolean {
  console.log(`apt-get ${words.join(" ")}`);
  return spawnSync("apt-get", words, { stdio: ["ignore", "ignore", "inherit"], env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } }).status === 0;
}

/**
 * Makes sure that every program is there, installing with apt where we are root on a Debian.
 *
 * @returns sentences on what is still missing; none when all is there
 */
export function missingPrograms(): readonly string[] {
  const wanted = missing().map(({ debian }) => debian);
  if (wanted.length > 0 && process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    console.log(`Missing: ${wanted.join(", ")}. Installing.`);
    const install = ["install", "-y", "--no-install-recommends", ...wanted, "fonts-dejavu-core", "fonts-liberation"];
    // A fresh machine has no list of packages yet.
    if (!aptGet(...install) && aptGet("update")) aptGet(...install);
  }
  return missing().map(({ name, debian, use }) =>
    `${name} is missing; ${use}. Install it (Debian and Ubuntu: apt-get install ${debian})${name === "Chromium" ? ", or set CHROMIUM_PATH to its program file" : ""}.`);
}
