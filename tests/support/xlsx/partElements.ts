/** The elements of a package's parts, and how the parts point at one another. */
import type { Element } from "@xmldom/xmldom";

export const all = (within: Element, name: string): Element[] => [...within.getElementsByTagNameNS("*", name)];
export const value = (element: Element, name: string): string => element.getAttribute(name) ?? "";

/** The part that a relationship of another part points at. */
export function targetOf(owner: string, target: string): string {
  const path = target.startsWith("/") ? [] : owner.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") path.pop();
    else if (step !== "" && step !== ".") path.push(step);
  }
  return path.join("/");
}

/** Children of an element that are unknown or out of the order that the schema asks for. */
export function orderFaults(name: string, found: readonly string[], order: readonly string[]): string[] {
  const unknown = found.filter((each) => !order.includes(each)).map((each) => `${name} has an element ${each}`);
  const places = found.filter((each) => order.includes(each)).map((each) => order.indexOf(each));
  const isOrdered = places.every((place, index) => index === 0 || place >= places[index - 1]!);
  return isOrdered ? unknown : [...unknown, `${name} has its elements out of order: ${found.join(", ")}`];
}
