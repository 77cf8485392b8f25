/**
 * Checks a workbook file against the rules that Excel insists on when it opens one: ECMA-376 part 2 (the package) and part 1
 * (references between parts, order and uniqueness). It shares no code with the program that it checks but the XML parser.
 */
import { DOMParser, type Element } from "@xmldom/xmldom";
import { strFromU8, unzipSync } from "fflate";
import { all, orderFaults, targetOf, value } from "./partElements";
import { sheetFaults } from "./sheetFaults";

export type Package = ReadonlyMap<string, Uint8Array>;

/** Every breach of a rule, in words; none for a file that is in order. */
export function packageFaults(bytes: Uint8Array): string[] {
  const parts: Package = new Map(Object.entries(unzipSync(bytes)));
  const documents = new Map<string, Element>();
  const faults: string[] = [];
  for (const [name, content] of parts) {
    if (!/\.(xml|rels|vml)$/.test(name)) continue;
    try {
      documents.set(name, parsed(strFromU8(content)));
    } catch (error) {
      faults.push(`${name} is not well-formed: ${String(error)}`);
    }
  }
  return [
    ...faults,
    ...typeFaults(parts, documents),
    ...relationshipFaults(parts, documents),
    ...bookFaults(documents),
    ...sheetFaults(documents),
  ];
}

function parsed(text: string): Element {
  const onError = (level: string, message: string) => {
    if (level !== "warning") throw new Error(message);
  };
  return new DOMParser({ onError }).parseFromString(text, "text/xml").documentElement!;
}

function typeFaults(parts: Package, documents: ReadonlyMap<string, Element>): string[] {
  const types = documents.get("[Content_Types].xml");
  if (types === undefined) return ["there are no content types"];
  const defaults = new Set(all(types, "Default").map((each) => value(each, "Extension").toLowerCase()));
  const overrides = all(types, "Override").map((each) => value(each, "PartName"));
  return [
    ...overrides.filter((name, index) => overrides.indexOf(name) !== index).map((name) => `${name} has two content types`),
    ...overrides.filter((name) => !parts.has(name.slice(1))).map((name) => `a content type is given for ${name}, which is not there`),
    ...[...parts.keys()]
      .filter(
        (name) => name !== "[Content_Types].xml" && !overrides.includes(`/${name}`) && !defaults.has(name.split(".").at(-1)!.toLowerCase()),
      )
      .map((name) => `${name} has no content type`),
    // "xml" is a default too, so a sheet without an override of its own would pass the line above.
    ...[...parts.keys()]
      .filter((name) => /^xl\/.*\/?(sheet|table|chart|drawing|styles|workbook)\d*\.xml$/.test(name) && !overrides.includes(`/${name}`))
      .map((name) => `${name} has only the content type of any XML`),
  ];
}

/** The part that a relationships part speaks for. */
const ownerOf = (name: string): string => name.replace(/(^|\/)_rels\/([^/]*)\.rels$/, "$1$2");

function relationshipFaults(parts: Package, documents: ReadonlyMap<string, Element>): string[] {
  const faults: string[] = [];
  const pointedAt = new Set(["[Content_Types].xml"]);
  for (const [name, root] of documents) {
    if (!name.endsWith(".rels")) continue;
    pointedAt.add(name);
    const owner = ownerOf(name);
    if (owner !== "" && !parts.has(owner)) faults.push(`${name} belongs to no part`);
    const ids = all(root, "Relationship").map((each) => value(each, "Id"));
    for (const id of ids) if (ids.indexOf(id) !== ids.lastIndexOf(id)) faults.push(`${name} has ${id} twice`);
    for (const each of all(root, "Relationship")) {
      if (value(each, "TargetMode") === "External") continue;
      const target = targetOf(owner, value(each, "Target"));
      pointedAt.add(target);
      if (!parts.has(target)) faults.push(`${name} points at ${target}, which is not there`);
    }
    const document = documents.get(owner);
    if (document === undefined) continue;
    for (const id of usedIds(document)) if (!ids.includes(id)) faults.push(`${owner} uses the relationship ${id}, which is not there`);
  }
  for (const [name, document] of documents) {
    const relationships = name.replace(/([^/]*)$/, "_rels/$1.rels");
    if (!name.endsWith(".rels") && usedIds(document).length > 0 && !parts.has(relationships))
      faults.push(`${name} uses relationships and has none`);
  }
  return [...faults, ...[...parts.keys()].filter((name) => !pointedAt.has(name)).map((name) => `nothing points at ${name}`)];
}

const usedIds = (root: Element): string[] =>
  [root, ...all(root, "*")].flatMap((element) =>
    [...element.attributes]
      .filter(({ namespaceURI }) => namespaceURI?.endsWith("/officeDocument/2006/relationships") ?? false)
      .map((each) => each.value),
  );

function bookFaults(documents: ReadonlyMap<string, Element>): string[] {
  const book = documents.get("xl/workbook.xml");
  if (book === undefined) return ["there is no workbook"];
  const sheets = all(book, "sheet");
  const names = sheets.map((each) => value(each, "name"));
  const lower = names.map((name) => name.toLowerCase());
  const numbers = sheets.map((each) => value(each, "sheetId"));
  const defined = all(book, "definedName").map((each) => ({
    key: `${value(each, "name").toLowerCase()}@${value(each, "localSheetId")}`,
    local: value(each, "localSheetId"),
  }));
  const order = [...book.childNodes].filter((node) => node.nodeType === 1).map((node) => (node as Element).localName!);
  return [
    ...names.filter((name, index) => lower.indexOf(name.toLowerCase()) !== index).map((name) => `two sheets are named ${name}`),
    ...names.filter((name) => name.length > 31 || name === "" || /[:\\/?*[\]]/.test(name)).map((name) => `${name} is no name for a sheet`),
    ...numbers.filter((id, index) => numbers.indexOf(id) !== index).map((id) => `two sheets have the number ${id}`),
    ...defined
      .filter(({ key }, index) => defined.findIndex((each) => each.key === key) !== index)
      .map(({ key }) => `the name ${key} is there twice`),
    ...defined
      .filter(({ local }) => local !== "" && Number(local) >= sheets.length)
      .map(({ key }) => `the name ${key} belongs to no sheet`),
    ...orderFaults("xl/workbook.xml", order, bookOrder),
  ];
}

const bookOrder = [
  "fileVersion",
  "fileSharing",
  "workbookPr",
  "AlternateContent",
  "revisionPtr",
  "absPath",
  "workbookProtection",
  "bookViews",
  "sheets",
  "functionGroups",
  "externalReferences",
  "definedNames",
  "calcPr",
  "oleSize",
  "customWorkbookViews",
  "pivotCaches",
  "smartTagPr",
  "smartTagTypes",
  "webPublishing",
  "fileRecoveryPr",
  "webPublishObjects",
  "extLst",
];
