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
    name: "Chromium",
    debian: "chromium",
    use: "the pages are tested in it",
    // The same places where tests/support/browser.ts looks.
    commands: ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"],
  },
  {
    name: "LibreOffice Calc",
    debian: "libreoffice-calc",
    use: "it recalculates and prints the workbooks",
    commands: ["soffice", "libreoffice"],
  },
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
  command.includes("/")
    ? isProgram(command)
    : (process.env["PATH"] ?? "").split(delimiter).some((folder) => isProgram(join(folder, command)));

/** The Chromium that the environment names instead of the usual ones. */
const namedChromium = process.env["CHROMIUM_PATH"];
const isNamed = ({ debian }: Program): boolean => debian === "chromium" && namedChromium !== undefined;

const isThere = (program: Program): boolean => (isNamed(program) ? isProgram(namedChromium ?? "") : program.commands.some(onPath));
const missing = (): readonly Program[] => programs.filter((program) => !isThere(program));

function aptGet(...words: readonly string[]): boolean {
  console.log(`apt-get ${words.join(" ")}`);
  return (
    spawnSync("apt-get", words, { stdio: ["ignore", "ignore", "inherit"], env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } })
      .status === 0
  );
}

/**
 * Makes sure that every program is there, installing with apt where we are root on a Debian.
 *
 * @returns sentences on what is still missing; none when all is there
 */
export function missingPrograms(): readonly string[] {
  // Installing does not help against a wrong name.
  const wanted = missing()
    .filter((program) => !isNamed(program))
    .map(({ debian }) => debian);
  if (wanted.length > 0 && process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    console.log(`Missing: ${wanted.join(", ")}. Installing.`);
    const install = [
      "install",
      "-y",
      "--no-install-recommends",
      ...wanted,
      "fonts-dejavu-core",
      "fonts-liberation",
      "fonts-crosextra-carlito",
    ];
    // A fresh machine has no list of packages yet.
    if (!aptGet(...install) && aptGet("update")) aptGet(...install);
  }
  return missing().map((program) =>
    isNamed(program)
      ? `CHROMIUM_PATH names ${namedChromium}, which is no program that can be run here.`
      : `${program.name} is missing; ${program.use}. Install it (Debian and Ubuntu: apt-get install ${program.debian}).`,
  );
}
