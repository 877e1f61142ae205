/** The moving page's own style: neutral greys, light and dark, one column on a phone. */
export const STYLE = `
:root { color-scheme: light dark; --wall: #c9c9c9; --paper: #f3f3f3; --mat: #fafafa; --ink: #1a1a1a; --ink-2: #414141; --hairline: #8a8a8a; --start: var(--start-on-white); --moving: var(--moving-on-white); }
@media (prefers-color-scheme: dark) { :root { --wall: #2a2a2a; --paper: #363636; --mat: #484848; --ink: #ededed; --ink-2: #c4c4c4; --hairline: #8c8c8c; --start: color-mix(in srgb, var(--start-on-white) 40%, white); --moving: color-mix(in srgb, var(--moving-on-white) 40%, white); } }
* { box-sizing: border-box; }
html { font-size: clamp(16px, 0.536vw + 8.28px, 22px); -webkit-text-size-adjust: 100%; }
body { margin: 0; background: var(--wall); color: var(--ink); font: 400 1rem/1.45 Literata, Georgia, "DejaVu Serif", serif; font-variant-numeric: lining-nums tabular-nums; }
main { max-width: 76rem; margin: 0 auto; padding: 1.25rem clamp(0.75rem, 3vw, 2.5rem) 2.5rem; display: grid; gap: 1rem 2.5rem; }
h1, p, figure, ul { margin: 0; padding: 0; }
h1 { font-size: 1.375rem; font-weight: 600; line-height: 1.25; text-wrap: balance; }
.lead { max-width: 44rem; text-wrap: pretty; }
.hung { display: flex; gap: 1rem; justify-content: center; align-items: start; }
.hung figure { flex: 0 1 auto; min-width: 0; }
.hung img { display: block; max-width: 100%; height: auto; border: 0.3rem solid var(--mat); }
.hung.upright img { max-height: 62vh; max-height: 62svh; width: auto; }
figcaption { display: flex; gap: 0.7rem; align-items: center; background: var(--paper); padding: 0.4rem 0.7rem; margin-top: 0.35rem; line-height: 1.3; }
figcaption b { font-size: 1.6rem; font-weight: 400; white-space: nowrap; }
figcaption strong { font-weight: 600; display: block; }
.detail { display: block; font-size: 0.875rem; color: var(--ink-2); }
.start figcaption { border-left: 4px solid var(--start); }
.moving figcaption { border-left: 4px dashed var(--moving); }
.start b { color: var(--start); }
.moving b { color: var(--moving); }
.move { background: var(--paper); padding: 0.6rem 1rem 0.7rem; }
.move p { display: flex; justify-content: space-between; gap: 1rem; align-items: baseline; }
.move label { font-weight: 600; }
.move output { font-weight: 600; font-size: 1.125rem; white-space: nowrap; }
.move small, .notes, .says { color: var(--ink-2); font-size: 0.875rem; }
input[type="range"] { width: 100%; height: 44px; margin: 0; accent-color: var(--ink); cursor: pointer; }
:focus-visible { outline: 3px solid var(--ink); outline-offset: -5px; }
#changes { display: block; max-width: 44rem; border-left: 4px solid var(--ink); padding-left: 0.75rem; text-wrap: pretty; }
.paper { background: var(--paper); padding: 0.5rem 1rem 0.75rem; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: baseline; padding: 0.4rem 0 0; }
thead th { border-bottom: 1.5px solid var(--ink); font-weight: 600; padding-bottom: 0.25rem; }
tbody th { font-weight: 400; }
td.says { padding: 0 0 0.4rem; border-bottom: 1px solid var(--hairline); text-wrap: pretty; }
tr:last-child > .says { border-bottom: 0; }
.number { width: 1%; text-align: right; white-space: nowrap; font-weight: 600; padding-left: 1rem; }
thead .key-start { color: var(--start); }
thead .key-moving { color: var(--moving); }
.notes { list-style: none; display: grid; gap: 0.35rem; max-width: 60rem; }
@media (min-width: 1000px) {
  main { grid-template-columns: minmax(0, 1fr) minmax(22rem, 27rem); align-items: start; }
  h1, .lead, .notes, noscript { grid-column: 1 / -1; }
  .show { display: grid; gap: 1rem; position: sticky; top: 0.75rem; }
  .tell { display: grid; gap: 1rem; }
}
@media (max-width: 999px) {
  .show, .tell { display: grid; gap: 1rem; }
  .move { position: sticky; bottom: 0; border-top: 1.5px solid var(--ink); }
}
@media (max-width: 699px) {
  .hung { gap: 0.5rem; }
  .hung.lying { flex-direction: column; align-items: center; }
  figcaption { display: block; padding: 0.3rem 0.5rem; font-size: 0.875rem; }
  figcaption b { font-size: 1.25rem; }
  .detail { font-size: 0.8125rem; }
}
@media print { .move { display: none; } body { background: none; } }
`;
