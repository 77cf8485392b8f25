/**
 * The real Excel library of `@microsoft/office-js` in Node, with a bridge in Excel's place. It is loaded once, from the
 * installed package, which is for developing and testing only: its files are neither copied nor bundled.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import vm from "node:vm";
import { Bridge } from "./bridge";
import { setOfficeContext } from "./officeContext";

let loaded: Bridge | undefined;

/** Loads the library at the first call, makes `Excel`, `Office` and `OfficeExtension` global, and gives the bridge. */
export function officeInNode(): Bridge {
  if (loaded) return loaded;
  const bridge = new Bridge();
  Object.assign(globalThis, browserParts(), { window: globalThis, _richApiNativeBridge: bridge });
  const file = createRequire(import.meta.url).resolve("@microsoft/office-js/dist/excel-web-16.00.js");
  vm.runInThisContext(readFileSync(file, "utf8"), { filename: "excel-web-16.00.js" });
  setOfficeContext(bridge);
  return (loaded = bridge);
}

/** The few parts of a browser that the library touches while it loads. */
function browserParts(): object {
  const nothing = () => undefined;
  const storage = { getItem: () => null, setItem: nothing, removeItem: nothing };
  return {
    navigator: { userAgent: "Node" },
    location: { href: "http://localhost/", search: "", hash: "", pathname: "/", protocol: "http:", host: "localhost" },
    document: { getElementById: () => null, getElementsByTagName: () => [], addEventListener: nothing, URL: "http://localhost/" },
    addEventListener: nothing,
    removeEventListener: nothing,
    sessionStorage: storage,
    localStorage: storage,
  };
}
