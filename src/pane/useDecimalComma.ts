import { findTables } from "../workbook/findTables";
import { decimalCommaSet } from "../workbook/tables/settings";
import { usePane } from "./paneContext";

/** Whether numbers are typed with a decimal comma in this workbook. */
export function useDecimalComma(): boolean {
  const content = usePane().watch.state().reading?.content;
  return content !== undefined && decimalCommaSet(findTables(content).tables.get("Season") ?? null);
}
