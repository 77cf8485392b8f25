/** The look of `help.html`: copper and slate on paper, in the dark, and in print. */
export const helpStyle = `
:root { --paper: #fffdf8; --ink: #22201d; --soft: #5a534a; --line: #d9d2c5; --copper: #8f4210; --link: #2b5379; }
@media (prefers-color-scheme: dark) { :root { --paper: #1f1d1a; --ink: #f2eee7; --soft: #c2bab0; --line: #4a443c; --copper: #e5a577; --link: #a9c1d9; } }
body { max-width: 46rem; margin: 0 auto; padding: 1.5rem 1rem 3rem; font: 16px/1.5 "Segoe UI", system-ui, sans-serif; color: var(--ink); background: var(--paper); overflow-wrap: anywhere; }
header { display: flex; align-items: center; gap: 0.75rem; border-bottom: 2px solid var(--copper); }
h1 { font-size: 1.6rem; }
h2 { margin: 2.25rem 0 0.5rem; font-size: 1.25rem; color: var(--copper); }
h3 { margin: 1.5rem 0 0.25rem; font-size: 1.05rem; }
p, ul, dl { margin: 0.5rem 0; }
ul { padding-inline-start: 1.25rem; }
li + li { margin-top: 0.25rem; }
nav ul { columns: 2 16rem; padding: 0; list-style: none; }
a { display: inline-block; min-height: 24px; color: var(--link); }
.jump { color: var(--soft); }
dl > div { display: grid; grid-template-columns: minmax(8rem, 13rem) minmax(0, 1fr); gap: 0 1rem; padding: 0.3rem 0; border-bottom: 1px solid var(--line); }
dt { font-weight: 600; }
dd { margin: 0; }
footer { margin-top: 2rem; border-top: 1px solid var(--line); }
@media (max-width: 30rem) { dl > div { display: block; } }
@media print {
  :root { --paper: #fff; --ink: #000; --soft: #333; --line: #999; --copper: #000; --link: #000; }
  body { max-width: none; padding: 0; font-size: 10pt; }
  nav, .jump, footer { display: none; }
  h2, h3 { break-after: avoid; }
  dl > div, li { break-inside: avoid; }
}
`;
