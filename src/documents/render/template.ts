import { largeSheet } from './large-sheet.ts'

/**
 * The one Typst template of all papers. What a person typed comes in as data (`sys.inputs.paper`, JSON) and is set as
 * text; it is never part of this source. Headings, tables, captions and lists are real ones, so the tags are true.
 */
export const template = String.raw`
#let paper = json(bytes(sys.inputs.paper))
#let sizes = (ordinary: 10pt, large: 14pt, wall: 9.5pt)
#let base = sizes.at(paper.print)
#let accent = rgb("#1f5a66")
#let ink = rgb("#1c2326")
#let quiet = rgb("#556166")
#let hair = 0.5pt + rgb("#c3cdd0")
#let wall = paper.print == "wall"
#let large = paper.print == "large"
#let footsize = 8pt

#set document(title: paper.title + " – " + paper.about, date: auto)
#set text(lang: paper.tongue.language, region: paper.tongue.region, font: "Noto Sans", size: base, fill: ink)
#set par(leading: 0.7em, spacing: 1.05em, justify: false)
#set enum(indent: 0pt, body-indent: 0.7em)
#set list(body-indent: 0.7em)
#show regex("\S{26}"): it => it + sym.zws

#set page(
  paper: "a4",
  margin: if wall { (x: 15mm, top: 16mm, bottom: 17mm) } else if large { (x: 11mm, top: 10mm, bottom: 14mm) } else { (left: 25mm, right: 22mm, top: 25mm, bottom: 28mm) },
  header-ascent: 35%,
  header: context {
    set text(size: footsize, fill: quiet)
    let first = counter(page).get().first() == 1
    if not (large and first) { grid(columns: (1fr, auto), paper.from, if not first { paper.title }) }
  },
  footer-descent: if large { 12% } else { 22% },
  footer: context {
    set text(size: footsize, fill: quiet)
    set par(leading: 0.5em)
    line(length: 100%, stroke: hair)
    v(-0.45em)
    if paper.caution != none and (large or here().page() > 1) { paper.caution; linebreak() }
    let goes-on = paper.turnOver != none and here().page() < counter(page).final().first()
    grid(
      columns: (1fr, auto), column-gutter: 2em, paper.provenance,
      { if goes-on { text(size: 13pt, weight: 700, fill: ink, [#paper.turnOver #sym.arrow.r #h(0.5em)]) }; counter(page).display("1 / 1", both: true) },
    )
  },
)

#set heading(numbering: none)
#show heading: set text(fill: accent, hyphenate: false)
#show heading.where(level: 1): set text(size: if wall { 19pt } else if large { 21pt } else { base * 2 }, weight: 700)
#show heading.where(level: 1): set block(below: 0.75em)
#show heading.where(level: 2): set text(size: if large { 12pt } else { base * 1.28 }, weight: 600)
#show heading.where(level: 3): set text(size: base * 1.06, weight: 600, fill: ink)
#show heading.where(level: 4): set text(size: base, weight: 600, fill: quiet)
#show heading.where(level: 2): set block(above: if wall { 1em } else { 2.1em }, below: 0.75em, sticky: true)
#show heading.where(level: 3): set block(above: 1.6em, below: 0.7em, sticky: true)

#let run(piece) = {
  if piece.kind == "strong" { text(weight: 600, piece.text) }
  else if piece.kind == "small" { text(size: 0.86em, fill: quiet, weight: 400, piece.text) }
  else { text(piece.text) }
}
#let words(pieces) = pieces.map(run).join()

#show figure: set block(breakable: true, above: 1.3em, below: 1.6em)
#show figure: set align(left)
#show figure.caption: it => block(sticky: true, width: 100%, align(left, text(size: 0.9em, fill: quiet, it.body)))
#set figure.caption(position: top)
#set figure(gap: 0.6em, supplement: none, numbering: none)
#set table.hline(stroke: hair)

#let aligns = (left: left, right: right, centre: center)
// A row stays on one page unless somebody wrote very much.
#let length(pieces) = pieces.map(piece => piece.text.len()).sum(default: 0)
#let cell(column, pieces, first, poster) = table.cell(breakable: length(pieces) > 1200, {
  if column.weight == "big" { text(size: if wall { 19pt } else { 1.7em }, weight: 700, words(pieces)) }
  else if column.weight == "strong" or first { text(weight: 600, size: if poster { 12pt } else { 1em }, words(pieces)) }
  else { words(pieces) }
})
#let rows(block) = {
  set text(size: 0.94em) if paper.print == "ordinary"
  let poster = wall and block.columns.any(column => column.weight == "big")
  figure(
  kind: table,
  caption: block.caption,
  table(
    columns: block.columns.map(column => column.share * 1fr),
    align: (x, _) => aligns.at(block.columns.at(x).align) + (if wall { horizon } else { top }),
    inset: (x, y) => (left: if x == 0 { 0pt } else { 5pt }, right: if x == block.columns.len() - 1 { 0pt } else { 5pt }, y: if wall { 3.6pt } else { 0.5em }),
    stroke: (_, y) => if y == 0 { (bottom: 1pt + accent) } else { (bottom: hair) },
    table.header(..block.columns.map(column => text(size: 0.9em, weight: 600, fill: accent, hyphenate: false, column.head))),
    ..block.rows.map(row => row.enumerate().map(((at, pieces)) => cell(block.columns.at(at), pieces, block.rowHeader and at == 0, poster))).flatten(),
  ),
)
}

#let callout(block) = std.block(
  width: 100%, breakable: false, above: 1.4em, below: 1.4em,
  inset: if block.tone == "stop" { (x: 1em, y: 0.9em) } else { (left: 1em, y: 0.25em) },
  stroke: if block.tone == "stop" { 1.6pt + ink } else { (left: (if block.tone == "calm" { 2pt + rgb("#c3cdd0") } else { 3pt + accent })) },
  {
    par(text(weight: 700, block.word))
    for line in block.lines { par(words(line)) }
    if block.items.len() > 0 { list(marker: [–], spacing: 0.6em, ..block.items.map(words)) }
  },
)

// Where a value takes more than one line, the next one must not look like its last line.
#let pairs(block) = {
  let long = not wall and block.facts.any(fact => length(fact.value) > 70)
  let gap = if long { 1em } else { 0.62em }
  std.block(above: 0.9em, below: 1.1em, for fact in block.facts {
    std.block(above: gap, below: gap, grid(
      columns: (if wall { 22% } else { 29% }, 1fr), column-gutter: 1em,
      text(fill: quiet, fact.term), words(fact.value),
    ))
  })
}

// Two by two, kept together: a line for the name, a shorter one for the day.
#let signatures(block) = std.block(breakable: false, {
  for pair in block.lines.chunks(2) {
    v(2.6em)
    grid(
      columns: (1fr, 1fr), column-gutter: 2.5em,
      ..pair.map(label => grid(
        columns: (2fr, 1fr), column-gutter: 1em, row-gutter: 0.5em,
        line(length: 100%, stroke: 0.6pt + ink), line(length: 100%, stroke: 0.6pt + ink),
        text(size: 0.86em, fill: quiet, label), text(size: 0.86em, fill: quiet, block.date),
      )),
    )
  }
})

#let big(block) = std.block(above: 1.1em, below: 1.1em, {
  set par(leading: 0.45em)
  text(size: if wall { 24pt } else { base * 1.75 }, weight: 700, block.text)
  if block.note != none { linebreak(); text(size: if wall { 11pt } else { base * 0.9 }, fill: quiet, block.note) }
})

#let picture(block) = std.block(breakable: false, above: 1.3em, below: 1.6em, width: 100%, {
  image(bytes(block.svg), format: "svg", alt: block.alt)
  text(size: 0.9em, fill: quiet, block.caption)
})

// Cut along the dashes: three in a row, none across two pages.
#let label(one) = {
  set par(leading: 0.45em, spacing: 0.55em)
  par(text(size: 1.3em, weight: 700, one.name))
  par[#text(size: 1.9em, weight: 700, one.big) #h(0.3em) #text(size: 1.1em, weight: 600, one.of)]
  for line in one.lines { par(words(line)) }
  for pair in one.blanks.chunks(2) {
    v(0.7em)
    grid(
      columns: (1fr, 0.7fr), column-gutter: 0.6em,
      ..pair.map(blank => grid(columns: (auto, 1fr), column-gutter: 0.4em, align: bottom, text(size: 0.8em, fill: quiet, blank), line(length: 100%, stroke: 0.6pt + ink))),
    )
  }
}
#let labels(block) = grid(
  columns: (1fr, 1fr, 1fr), inset: 2.6mm, stroke: (paint: quiet, thickness: 0.5pt, dash: "dashed"),
  ..block.labels.map(one => grid.cell(breakable: false, label(one))),
)

#let set-block(block) = {
  if block.kind == "heading" { heading(level: block.level + 1, text(block.text)) }
  else if block.kind == "paragraph" { par(words(block.words)) }
  else if block.kind == "list" {
    set text(lang: block.language, region: none) if block.language != none
    if block.numbered { enum(spacing: 0.75em, ..block.items.map(item => enum.item(words(item)))) }
    else { list(marker: text(fill: accent, [–]), spacing: 0.75em, ..block.items.map(item => list.item(words(item)))) }
  }
  else if block.kind == "table" { rows(block) }
  else if block.kind == "callout" { callout(block) }
  else if block.kind == "facts" { pairs(block) }
  else if block.kind == "signatures" { signatures(block) }
  else if block.kind == "big" { big(block) }
  else if block.kind == "picture" { picture(block) }
  else if block.kind == "labels" { labels(block) }
  else if block.kind == "page-break" { pagebreak(weak: true) }
  else { panic("unknown block") }
}

#let opening = [
  #heading(level: 1, text(paper.title))
  #par(text(weight: 600, paper.about))
  #v(-0.45em)
  #par(text(fill: quiet, size: 0.92em, paper.date))
  #if paper.caution != none [
    #v(-0.55em)
    #par(text(fill: quiet, size: footsize, paper.caution))
  ]
  #v(if paper.print == "ordinary" { 0.6em } else { 0em })
]

${largeSheet}
#if wall {
  // The first page is read from a distance and must hold everything: too much of it is set a little smaller.
  let end = paper.blocks.position(block => block.kind == "page-break")
  let first = if end == none { paper.blocks } else { paper.blocks.slice(0, end) }
  let sheet = { opening; for block in first { set-block(block) } }
  layout(size => {
    let shrunk(part) = std.block(width: size.width / part, sheet)
    let part = (1.0, 0.96, 0.92, 0.88, 0.84, 0.8, 0.76, 0.72, 0.68, 0.64, 0.6).find(part => {
      measure(shrunk(part)).height * part <= size.height
    })
    if part == none or part == 1.0 { sheet } else { scale(part * 100%, origin: top + left, reflow: true, shrunk(part)) }
  })
  if end != none { for block in paper.blocks.slice(end) { set-block(block) } }
} else if large {
  large-sheet
} else {
  opening
  for block in paper.blocks { set-block(block) }
}
`
