import { coinBox, coinCopper, coinRadius, coinStrips, stripPath, tiltDegrees } from "./coinMark";

/** The mark beside the product's name, which says it already. */
export function Coin({ size }: { readonly size: number }) {
  const middle = coinBox / 2;
  return (
    <svg width={size} height={size} viewBox={`0 0 ${coinBox} ${coinBox}`} aria-hidden="true">
      <circle cx={middle} cy={middle} r={coinRadius} fill={coinCopper} />
      <g transform={`rotate(${tiltDegrees} ${middle} ${middle})`}>
        {coinStrips.map(({ from, to, colour }) => (
          <path key={from} fill={colour} d={stripPath(from, to)} />
        ))}
      </g>
    </svg>
  );
}
