/**
 * Where a box must be scrolled to, in pixels, for the least scrolling that brings something in sight that begins at `start` of its
 * content; its beginning where it is larger than what is in sight.
 *
 * Used in place of `scrollIntoView`, which in some browsers also moves the place where the next Tab begins, and scrolls the page
 * around the box.
 */
export function scrolledTo(scrolled: number, start: number, size: number, inSight: number): number {
  if (start < scrolled || size > inSight) return start;
  return Math.max(scrolled, start + size - inSight);
}
