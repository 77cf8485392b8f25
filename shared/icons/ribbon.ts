/**
 * The pictures of the ribbon's four buttons, described as the coin is: flat shapes, the last one on top. Lengths are pixels of the
 * smallest icon, so that its edges fall on pixels. Both colours stand out on a white ribbon and on a black one.
 */

/** The side of the box that they are drawn in, which is the smallest icon. */
export const ribbonBox = 16;
export const ribbonColours = { copper: "#b8662c", pale: "#f0cbaa", slate: "#5b83a8", white: "#ffffff" } as const;

/** A part of the picture; colour `null` cuts a hole into what is under it. */
export type Shape = { readonly colour: string | null; readonly holds: (x: number, y: number) => boolean };

const { copper, pale, slate, white } = ribbonColours;
const box = (colour: string | null, left: number, top: number, right: number, bottom: number): Shape => ({
  colour,
  holds: (x, y) => x >= left && x < right && y >= top && y < bottom,
});
/** A sheet of paper: its edge is a pixel wide, and what lies around it is cut away so that it stands before that. */
const sheet = (left: number, top: number, right: number, bottom: number): readonly Shape[] => [
  box(null, left - 1, top - 1, right + 1, bottom + 1),
  box(copper, left, top, right, bottom),
  box(pale, left + 1, top + 1, right - 1, bottom - 1),
];
const ring = (
  colour: string,
  [x0, y0]: readonly [number, number],
  outer: number,
  inner: number,
  part = (_x: number, _y: number) => true,
) => ({
  colour,
  holds: (x: number, y: number) => {
    const away = Math.hypot(x - x0, y - y0);
    return away <= outer && away >= inner && part(x - x0, y - y0);
  },
});

/** By the page that the button opens. */
export const ribbonPictures = {
  /** What acres cost, as bars of which one stands above the price. */
  season: [box(copper, 1, 9, 5, 15), box(copper, 6, 6, 10, 15), box(copper, 11, 1, 15, 15), box(slate, 0, 3, 16, 5)],
  /** An invoice, and one more line. */
  inputs: [
    ...sheet(2, 1, 11, 15),
    box(copper, 4, 4, 9, 5),
    box(copper, 4, 7, 9, 8),
    box(null, 10, 7, 14, 16),
    box(null, 7, 10, 16, 14),
    box(slate, 11, 8, 13, 16),
    box(slate, 8, 11, 16, 13),
  ],
  /** Two pages with figures and a sum. */
  lender: [...sheet(1, 1, 10, 12), ...sheet(6, 4, 15, 15), box(copper, 8, 7, 13, 8), box(copper, 8, 9, 13, 10), box(slate, 8, 11, 13, 13)],
  /** A question mark. */
  help: [
    ring(slate, [8, 8], 7.5, 0),
    ring(white, [8, 6.5], 3.2, 1.3, (x, y) => y <= 0 || x >= 0),
    box(white, 7, 8.2, 9, 10.6),
    box(white, 7, 11.5, 9, 13.4),
  ],
} as const satisfies Readonly<Record<string, readonly Shape[]>>;
