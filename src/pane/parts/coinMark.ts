/** The product's mark: a copper coin whose face is cut into strips, as a field is into acres. Lengths are parts of its box of 64. */

export const coinBox = 64;
export const coinCopper = "#8f4210";
const middle = coinBox / 2;
/** The rim is what shows of the whole coin around its face, and between the strips. */
export const coinRadius = 31;
export const faceRadius = 25;
/** How far the strips lean to the right. */
export const tiltDegrees = 24;
/** Each strip from left to right, from the coin's middle. The cuts are a pixel wide in the smallest icon. */
export const coinStrips = [
  { from: -faceRadius, to: -9, colour: "#f0cbaa" },
  { from: -4, to: 9, colour: "#e0a474" },
  { from: 14, to: faceRadius, colour: "#c9793f" },
] as const;

/** The outline of a strip of the face before it leans: two cuts, and the rim above and below. */
export function stripPath(from: number, to: number): string {
  const half = (x: number) => Math.sqrt(faceRadius ** 2 - x ** 2);
  const spot = (x: number, y: number) => `${middle + x} ${(middle + y).toFixed(2)}`;
  const arc = `A${faceRadius} ${faceRadius} 0 0 1`;
  return `M${spot(from, -half(from))}${arc} ${spot(to, -half(to))}L${spot(to, half(to))}${arc} ${spot(from, half(from))}Z`;
}

/** The mark as an SVG file. */
export const coinSvg =
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 ` +
  `0 ${coinBox} ${coinBox}"><circle cx="${middle}" ` +
  `cy="${middle}" ` +
  `r="${coinRadius}" fill="${coinCopper}"/>` +
  `<g transform="rotate(${tiltDegrees} ${middle} ` +
  `${middle})">${coinStrips.map(({ from, to, colour }) => `<path fill="${colour}" d="${stripPath(from, to)}"/>`).join("")}</g></svg>\n`;
