/** One accent colour; everything else is ink and space. The footer with the caution repeats on every printed page. */
export const printStyle = `
:root { --accent: #1f5a66; --ink: #1c2326; --quiet: #5a666b; --line: #c9d2d4; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 46rem; padding: 2rem 1.5rem; color: var(--ink); background: #fff;
  font: 1rem/1.5 "Noto Sans", system-ui, sans-serif; overflow-wrap: anywhere; white-space: pre-line; }
body.large { font-size: 1.2rem; }
body.wall { max-width: 60rem; font-size: 1.15rem; }
main, header, footer, table, thead, tbody, tr, dl, ul, ol, aside { white-space: normal; }
td, th, dd, li, p { white-space: pre-line; }
header p, footer p, .date, .caution, small { color: var(--quiet); font-size: 0.85em; }
header { border-bottom: 1px solid var(--line); }
footer { margin-top: 3rem; border-top: 1px solid var(--line); }
h1 { font-size: 1.9em; line-height: 1.2; margin: 1.2em 0 0.2em; color: var(--accent); }
h2 { font-size: 1.25em; margin: 1.8em 0 0.4em; color: var(--accent); }
h3, h4 { font-size: 1.05em; margin: 1.4em 0 0.3em; }
.about { font-weight: 600; margin: 0; }
.date { margin: 0 0 1em; }
table { width: 100%; border-collapse: collapse; margin: 1em 0; }
caption { text-align: left; color: var(--quiet); font-size: 0.9em; padding-bottom: 0.3em; }
th, td { text-align: left; vertical-align: top; padding: 0.35em 0.8em 0.35em 0; border-bottom: 1px solid var(--line);
  font-weight: inherit; }
thead th { color: var(--accent); font-weight: 600; border-bottom: 2px solid var(--accent); }
tbody th, .strong { font-weight: 600; }
.right { text-align: right; } .centre { text-align: center; }
thead th.big { font-size: inherit; line-height: inherit; }
td.big { font-size: 1.6em; font-weight: 700; line-height: 1.1; }
dl div { display: grid; grid-template-columns: minmax(9rem, 1fr) 3fr; gap: 1rem; padding: 0.2em 0; }
dt { color: var(--quiet); } dd { margin: 0; }
figure.picture { margin: 1.2em 0; break-inside: avoid; }
figure.picture svg { max-width: 100%; height: auto; }
figure.picture figcaption { color: var(--quiet); font-size: 0.9em; }
aside { border-left: 4px solid var(--accent); padding: 0.2em 0 0.2em 1em; margin: 1.2em 0; }
aside.stop { border: 3px solid var(--ink); padding: 0.6em 1em; }
aside.calm { border-left-color: var(--line); }
aside p { margin: 0.3em 0; } .word { font-weight: 700; }
.big { font-size: 2em; font-weight: 700; line-height: 1.2; margin: 0.6em 0; }
.big small { display: block; font-weight: 400; font-size: 0.5em; }
ul.labels { list-style: none; padding: 0; display: grid; grid-template-columns: repeat(3, 1fr); }
.labels li { border: 1px dashed var(--ink); padding: 0.5em; break-inside: avoid; font-size: 0.8em; }
.labels p { margin: 0; } .labels .name { font-weight: 700; font-size: 1.2em; } .labels .volume { font-weight: 700; font-size: 1.6em; }
.labels .blank { border-bottom: 1px solid var(--ink); margin-top: 0.5em; color: var(--quiet); }
.signatures p { display: flex; justify-content: space-between; gap: 2rem; margin: 2.4em 0 0; }
.signatures span { border-top: 1px solid var(--ink); flex: 3; padding-top: 0.2em; color: var(--quiet); font-size: 0.85em; }
.signatures span + span { flex: 1; }
/* Where there is room no word and no amount is broken. */
@media print, (min-width: 40rem) { td, th { overflow-wrap: break-word; } td.big, td.right { white-space: nowrap; } }
@page { size: A4; margin: 20mm 22mm 24mm; }
@media print {
  body { max-width: none; padding: 0; font-size: 10.5pt; }
  body.large { font-size: 14pt; }
  body.wall { font-size: 12pt; }
  footer { position: fixed; bottom: -16mm; left: 0; right: 0; margin: 0; }
  main .caution { display: none; }
  h2, h3, h4, caption { break-after: avoid; }
  tr, aside, .signatures { break-inside: avoid; }
  .page-break { break-after: page; }
}
`
