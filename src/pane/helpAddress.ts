/** The id of the part that holds the files which a page of one file carries inside: a zip in base 64, written by the build. */
export const carriedId = "carried-files";

/** Where the help is: a page beside this one, or this page itself where it is one file. */
export const helpAddress = (): string => (document.getElementById(carriedId) === null ? "help.html" : "#help");
