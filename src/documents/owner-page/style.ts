/**
 * The style of the owner's page. Everything can be read without it; it needs nothing that a phone of ten years ago lacks:
 * no grid, no variables, no script. One column, one accent, large enough to be read at arm's length.
 */
export const ownerPageStyle = `
html { font-size: 106.25%; -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body { margin: 0 auto; max-width: 43rem; padding: 0 1rem 3rem; color: #1c2326; background: #fff;
  font: 1rem/1.55 "Noto Sans", -apple-system, "Segoe UI", Roboto, sans-serif; overflow-wrap: break-word; word-wrap: break-word; }
h1, h2, h3, h4, h5 { line-height: 1.25; margin: 0; }
h1 { font-size: 1.75rem; margin: 0.25rem 0 0.75rem; }
h2 { font-size: 1.35rem; margin: 0 0 0.75rem; color: #1f5a66; }
h3 { font-size: 1.15rem; margin: 2rem 0 0.5rem; }
h4 { font-size: 1rem; margin: 1.5rem 0 0.25rem; color: #1f5a66; }
h5 { font-size: 1rem; margin: 0 0 0.25rem; }
p, ul, ol, dl { margin: 0 0 0.75rem; }
ul, ol { padding-left: 1.3rem; }
li { margin: 0.2rem 0; }
a { color: #1f5a66; text-underline-offset: 0.15em; }
a:focus, button:focus, summary:focus, input:focus, select:focus, textarea:focus { outline: 3px solid #1f5a66; outline-offset: 2px; }
header { padding-top: 1.5rem; }
.clinic { color: #5a666b; margin: 0; }
.hello { font-size: 1.15rem; }
nav { border: 1px solid #c9d2d4; border-radius: 6px; padding: 1rem 1.25rem 0.5rem; margin: 1.5rem 0; }
nav h2 { font-size: 1rem; margin: 0 0 0.25rem; }
nav a, section > ul.screen a { display: block; padding: 0.25rem 0; min-height: 24px; }
section, footer { border-top: 2px solid #1f5a66; margin-top: 3rem; padding-top: 1.25rem; }
article { border-top: 1px solid #c9d2d4; margin-top: 2.5rem; }
article h3 { margin-top: 1.25rem; font-size: 1.25rem; }
dt { font-weight: 600; }
dd { margin: 0 0 0.6rem; }
small, .clinic, .quiet { font-size: 0.88rem; color: #5a666b; }
.quiet { font-size: 1rem; }
.sources { font-size: 0.88rem; list-style: none; padding: 0; }
.written { white-space: pre-line; }
.told { border-left: 6px solid #1f5a66; padding: 0.75rem 1rem; background: #f1f6f7; font-weight: 600; }
.unknown { border-left: 4px solid #c9d2d4; padding-left: 1rem; margin-top: 1.25rem; }
figure { margin: 1rem 0; }
figure svg { display: block; max-width: 100%; height: auto; forced-color-adjust: none; }
figcaption { font-size: 0.88rem; color: #5a666b; }
.wide { display: none; }
details { margin: 0.25rem 0 0.75rem; }
summary { color: #1f5a66; padding: 0.55rem 0; cursor: pointer; }
.turn a { display: inline-block; margin: 0 1.25rem 0.5rem 0; padding: 0.35rem 0; }
.figure { margin: 1.25rem 0 1.75rem; }
.figure p { margin: 0 0 0.25rem; }
.group { color: #5a666b; }
.framing { font-weight: 600; }
.square { margin: 0.25rem 0 0.5rem; }
.dots { display: block; width: 8.5rem; height: 8.5rem; color: #1c2326; }
.key { list-style: none; padding: 0; }
.sample { display: inline-block; width: 1.1rem; height: 1.1rem; overflow: hidden; vertical-align: -0.2rem; margin-right: 0.5rem; }
.sample .dots { width: 11rem; height: 11rem; }
table { border-collapse: collapse; width: 100%; margin: 0.5rem 0 1rem; }
table, thead, tbody, tr, th, td { display: block; }
thead { position: absolute; left: -999em; }
th, td { text-align: left; vertical-align: top; padding: 0.2rem 0; font-weight: 400; }
tbody tr { border-top: 1px solid #c9d2d4; padding: 0.6rem 0; }
tbody th { font-weight: 600; }
.of { display: inline-block; min-width: 4rem; margin-right: 0.5rem; font-size: 0.88rem; font-weight: 400; color: #5a666b; text-indent: 0; }
td { padding-left: 4.5rem; text-indent: -4.5rem; }
table.two td { padding-left: 0; text-indent: 0; } table.two .of { display: block; }
th[scope="colgroup"] { color: #1f5a66; padding-top: 0.75rem; }
.pick { border: 1px solid #c9d2d4; border-radius: 6px; padding: 0.25rem 1.25rem 1.25rem; margin: 1.5rem 0; }
.pick h3 { margin-top: 1rem; }
select, textarea { min-height: 44px; width: 100%; max-width: 100%; box-sizing: border-box; font: inherit; color: inherit; background: #fff; border: 1px solid #5a666b; border-radius: 4px; padding: 0.5rem; }
button { font: inherit; font-weight: 600; color: #fff; background: #1f5a66; border: 2px solid #1f5a66; border-radius: 6px; padding: 0.6rem 1.25rem; min-height: 44px; }
fieldset { border: 0; margin: 0; padding: 0; min-width: 0; }
legend { padding: 0; }
.wishes h3 { margin-top: 1.75rem; }
.weighed { margin: 1.25rem 0 0; }
.weighed legend { font-weight: 600; }
.wishes label { display: inline-block; padding: 0.55rem 0 0.55rem 1.5rem; margin-right: 1.25rem; text-indent: -1.5rem; }
.wishes h3 label { padding: 0; text-indent: 0; }
input[type="radio"] { accent-color: #1f5a66; width: 1.15rem; height: 1.15rem; vertical-align: -0.2rem; margin: 0 0.35rem 0 0; }
[data-kept] .kept-only { display: block; border-left: 6px solid #1c2326; padding: 0.75rem 1rem; background: #f1f6f7; font-weight: 600; }
[data-kept] .live-only { display: none; }
.note label { display: block; }
.note h3 { margin-top: 2rem; }
.note button[type="submit"] { margin-top: 1rem; }
.note h3 label { display: inline; }
.note fieldset { margin-top: 2rem; }
.note fieldset h3 { margin-top: 0; }
.note .line label { padding: 0.55rem 0 0.55rem 1.65rem; text-indent: -1.65rem; }
.note .when label { display: inline-block; margin: 0 1rem 0.75rem 0; }
.note input[type="date"], .note input[type="time"], .note input[type="file"] { display: block; min-height: 44px; max-width: 100%; box-sizing: border-box; font: inherit; color: inherit; background: #fff; }
.note input[type="date"], .note input[type="time"] { border: 1px solid #5a666b; border-radius: 4px; padding: 0.5rem; margin-top: 0.25rem; }
.note input[type="file"] { padding: 0.5rem 0; width: 100%; }
.chosen { list-style: none; padding: 0; }
.chosen li { margin: 0.75rem 0; }
.chosen img, .sent img { display: block; max-width: 100%; max-height: 14rem; border: 1px solid #c9d2d4; border-radius: 4px; margin: 0.25rem 0 0.5rem; }
.sent img { min-height: 3rem; }
.sent .answer { border-left: 4px solid #1f5a66; padding-left: 1rem; margin: 1rem 0; }
.waits { border-top: 1px solid #c9d2d4; padding: 0.75rem 0; }
.waits .state { font-weight: 600; }
button.plain { color: #1f5a66; background: none; font-weight: 400; margin: 0 0.75rem 0.5rem 0; }
[hidden] { display: none; }
form.ask h2, .now h2, .now h3 { margin-top: 0; }
#kept-here-buttons { margin-top: 1.25rem; }
.one { margin: 2rem 0 0; padding-top: 0.25rem; }
.one h3 { margin: 0 0 0.35rem; font-size: 1.1rem; }
.one label { display: block; margin: 0.4rem 0 0; padding: 0.7rem 0.75rem 0.7rem 2.6rem; text-indent: -1.6rem; border: 1px solid #5a666b; border-radius: 6px; }
.one h3 label { margin: 0; padding: 0; text-indent: 0; border: 0; }
.one span { text-indent: 0; }
.why { font-size: 0.94rem; color: #45525a; margin: 0 0 0.6rem; }
.worry { font-weight: 600; } .worry a { white-space: nowrap; }
.second button { color: #1f5a66; background: #fff; }
.now { border: 3px solid #1c2326; border-radius: 6px; padding: 1rem 1.25rem 0.25rem; }
.now a { font-size: 1.15rem; font-weight: 600; }
.answers div { padding-left: 0; border-top: 1px solid #c9d2d4; padding-top: 0.5rem; }
.answers dt { position: static; width: auto; font-weight: 400; color: #45525a; }
.answers dd { font-weight: 600; }
nav.pages { padding: 0.25rem 1.25rem; }
nav.pages ul { list-style: none; margin: 0; padding: 0; }
nav.pages li { margin: 0; border-top: 1px solid #c9d2d4; }
nav.pages li:first-child { border-top: 0; }
nav.pages a { padding: 0.6rem 0; min-height: 26px; }
nav.pages a[aria-current] { font-weight: 600; color: inherit; text-decoration: none; }
.as-of { font-weight: 600; }
.paper caption { display: block; text-align: left; color: #5a666b; font-size: 0.88rem; }
.paper h2 { margin-top: 2.25rem; }
.paper dl div { padding: 0.2rem 0; }
.paper aside { border-left: 4px solid #1f5a66; padding: 0.2rem 0 0.2rem 1rem; margin: 1.25rem 0; }
.paper aside.stop { border: 3px solid #1c2326; border-radius: 6px; padding: 0.75rem 1rem; }
.paper aside p { margin: 0.3rem 0; white-space: pre-line; }
.paper .word { font-weight: 700; }
.paper p, .paper dd { white-space: pre-line; }
.paper td { padding-left: 7.5rem; text-indent: -7.5rem; }
.paper td::before { content: attr(data-head); display: inline-block; width: 7rem; padding-right: 0.5rem; text-indent: 0; color: #5a666b; }
@media (min-width: 44rem), print {
  .paper caption { display: table-caption; }
  .paper td { padding-left: 0; text-indent: 0; } .paper td::before { display: none; }
  .paper dl div { padding-left: 10.5rem; }
  dl.answers div { padding-left: 0; } .answers dt { position: static; width: auto; }
  body { padding: 0 2rem 4rem; }
  .narrow { display: none; }
  .wide { display: block; }
  .figure { padding-left: 10.5rem; position: relative; min-height: 9rem; }
  .square { position: absolute; left: 0; top: 0.2rem; }
  dl div { padding-left: 10.5rem; position: relative; }
  dt { position: absolute; left: 0; width: 9.5rem; }
  table { display: table; } thead { display: table-header-group; position: static; } tbody { display: table-row-group; }
  tr { display: table-row; } th, td { display: table-cell; padding: 0.6rem 1.25rem 0.6rem 0; text-indent: 0; border-top: 1px solid #c9d2d4; }
  thead th { font-weight: 600; border-top: 0; } .of, table.two .of { display: none; }
  table.two th, table.two td { width: 33%; } table.two th[scope="row"], table.two thead th:first-child { width: 21%; }
}
@media print {
  html { font-size: 80%; }
  body { max-width: none; padding: 0; }
  .screen, .wishes .unasked, details, select { display: none; }
  section { margin-top: 1.5rem; } .figure, figure, tr, .weighed { break-inside: avoid; page-break-inside: avoid; }
  h2, h3, h4, h5 { break-after: avoid; page-break-after: avoid; }
  a { color: inherit; }
  textarea { height: 10rem; }
}
@media screen and (prefers-color-scheme: dark) {
  body { color: #e6ebec; background: #14191b; }
  h2, h4, a, summary, th[scope="colgroup"], button.plain { color: #8cc5d1; }
  small, .clinic, .quiet, .group, figcaption, .of, .paper caption, .paper td::before { color: #a9b4b8; }
  nav, article, .pick, nav.pages li, tbody tr, th, td, .waits, .chosen img, .sent img { border-color: #4a565a; }
  section, footer, .paper aside, .sent .answer, button.plain { border-color: #8cc5d1; }
  .paper aside.stop, [data-kept] .kept-only { border-color: #e6ebec; }
  .told, [data-kept] .kept-only { background: #222b2e; } .told { border-color: #8cc5d1; }
  select, textarea, .note input[type="date"], .note input[type="time"], .note input[type="file"] { color: #e6ebec; background: #1c2326; border-color: #a9b4b8; color-scheme: dark; }
  button { color: #14191b; background: #8cc5d1; border-color: #8cc5d1; } button.plain { background: none; }
  input[type="radio"] { accent-color: #8cc5d1; }
  a:focus, button:focus, summary:focus, input:focus, select:focus, textarea:focus { outline-color: #8cc5d1; }
  .why, .answers dt { color: #a9b4b8; } .now { border-color: #e6ebec; } .answers div { border-color: #4a565a; }
  .one label { border-color: #a9b4b8; } .second button { color: #8cc5d1; background: none; }
  figure svg { background: #fff; } .dots { color: #e6ebec; }
}
`
