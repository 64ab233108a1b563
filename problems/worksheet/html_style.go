package worksheet

// webStyle is how a page for a browser looks: on a screen in the reader's choice of light and dark, where figures are turned
// to light on dark with their hues kept; in a narrow window, where figures shrink as far as they can be read and
// scroll, as tables do; and on paper.
const webStyle = `
:root { --ink: #1a1a1a; --faint: #595959; --ground: #ffffff; --rule: #8c8c8c; --panel: #f3f3f0; --link: #0b4f8a; }
@media screen and (prefers-color-scheme: dark) {
  :root { --ink: #e6e6e6; --faint: #b0b0b0; --ground: #1a1a1a; --rule: #7a7a7a; --panel: #262626; --link: #8cc4ff; }
  figure svg { filter: invert(0.9) hue-rotate(180deg); }
}
* { box-sizing: border-box; }
body { margin: 0; color: var(--ink); background: var(--ground); font: 1rem/1.5 "DejaVu Serif", Georgia, serif; overflow-wrap: anywhere; }
main { max-width: 46rem; margin: 0 auto; padding: 1rem; }
a { color: var(--link); }
.skip { position: absolute; left: 0.5rem; top: -4rem; padding: 0.5rem; background: var(--ground); }
.skip:focus { top: 0.5rem; }
:focus-visible { outline: 3px solid var(--link); outline-offset: 2px; }
h1, h2, h3, h4 { line-height: 1.25; text-wrap: balance; }
h1 { font-size: 1.7rem; margin: 0.5rem 0; }
h2 { font-size: 1.35rem; margin: 2rem 0 0.6rem; }
h3 { font-size: 1.05rem; margin: 1.4rem 0 0.3rem; }
h4 { font-size: 1rem; margin: 1.2rem 0 0.3rem; }
article + article { margin-top: 3rem; border-top: 2px solid var(--rule); }
p { margin: 0.5rem 0; }
nav ul { display: flex; flex-wrap: wrap; gap: 0.25rem 1.2rem; margin: 0.8rem 0; padding: 0.5rem 0.8rem; list-style: none; background: var(--panel); }
dl { display: grid; grid-template-columns: max-content 1fr; gap: 0.2rem 1rem; margin: 0.5rem 0; }
dt { grid-column: 1; font-weight: bold; }
dd { grid-column: 2; margin: 0; }
var { font-style: italic; }
sub { font-size: 0.72em; line-height: 0; vertical-align: -0.2em; }
.maths { margin: 0.5rem 0 0.5rem 2rem; }
.maths p { margin: 0.15rem 0; padding-left: 1.5rem; text-indent: -1.5rem; }
.scroll { overflow-x: auto; margin: 0.8rem 0; }
table { border-collapse: collapse; border-top: 2px solid var(--ink); border-bottom: 2px solid var(--ink); font-variant-numeric: lining-nums tabular-nums; }
th, td { padding: 0.15rem 0.8rem 0.15rem 0; text-align: left; vertical-align: baseline; font-weight: normal; overflow-wrap: normal; }
thead th { border-bottom: 1px solid var(--ink); font-size: 0.9rem; white-space: nowrap; }
.right { text-align: right; white-space: nowrap; }
figure { margin: 1.2rem 0; text-align: center; }
figure svg { max-width: 100%; min-width: var(--least, 0); height: auto; }
figure .scroll { margin: 0; }
.beside figure { min-width: 0; max-width: 100%; }
figcaption { font-size: 0.9rem; color: var(--faint); }
.beside { display: flex; flex-wrap: wrap; justify-content: center; gap: 0 1rem; align-items: end; }
footer { max-width: 46rem; margin: 0 auto; padding: 0 1rem 1rem; font-size: 0.9rem; color: var(--faint); }
.heard { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
@media (max-width: 34rem) {
  dl { gap: 0.2rem 0.6rem; }
  .maths { margin-left: 0.5rem; }
}
@media print {
  @page { margin: 2cm; @bottom-right { content: "Page " counter(page) " of " counter(pages); font-size: 9pt; } }
  body { font-size: 10.5pt; line-height: 1.35; }
  main { max-width: none; padding: 0; }
  nav, .skip, footer { display: none; }
  h2, h3, h4 { break-after: avoid; }
  figure, tr, .block { break-inside: avoid; }
  thead { display: table-header-group; }
  .scroll { overflow: visible; }
  figure svg { min-width: 0; }
  article + article { break-before: page; border: 0; }
}
`
