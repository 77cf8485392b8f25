export type Told = { readonly tone: "done" | "failed"; readonly text: string } | null;

/** What came of what was just done. The region is always there, so that what appears in it is read out. */
export const ToldLine = ({ told }: { readonly told: Told }) => (
  <div aria-live="polite">{told !== null && <p className={`pn-result pn-result-${told.tone}`}>{told.text}</p>}</div>
);
