import project from "../../package.json";

/** The version of Pennyacre, as the package names it. */
export const version: string = project.version;
