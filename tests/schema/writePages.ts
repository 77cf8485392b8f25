/** Writes the pages of docs that follow from the code. */
import { writeFileSync } from "node:fs";
import { tablesPage } from "./tablesPage";

writeFileSync("docs/tables.md", tablesPage());
