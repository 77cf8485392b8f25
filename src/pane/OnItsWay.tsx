/** What stands in place of a page whose part of the program is still on its way; who takes pictures waits until it is gone. */
export const pageOnItsWay = "Loading this page …";

export function OnItsWay() {
  return <p role="status">{pageOnItsWay}</p>;
}
