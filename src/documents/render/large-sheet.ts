/**
 * How a paper in large letters is set, as a part of the template: one side of A4 wherever it fits. What a line is about
 * stands on the left, what is said of it beside it; boxes and tables take the whole width. Of several steps of air the
 * widest that still fits on one side is taken; the letters stay as large as they are. What fits in none runs on to a
 * second side in the order of its blocks, and the first says so.
 */
export const largeSheet = String.raw`
#let left-width = 28.5mm
#let beside(left, right) = grid(
  columns: (left-width, 1fr), column-gutter: 2mm, pad(top: 0.1em, left), right,
)
#let term(body) = text(size: 12pt, weight: 600, fill: accent, hyphenate: false, body)
#let large-heading(block) = { set std.block(above: 0pt, below: 0pt); heading(level: block.level + 1, text(block.text)) }

// Short things in two columns, cut where both come out about as long.
#let in-two(items, air) = {
  let total = items.map(length).sum()
  let cuts = range(1, items.len() + 1)
  let lean(cut) = calc.abs(total - 2 * items.slice(0, cut).map(length).sum())
  let cut = cuts.fold(1, (best, one) => if lean(one) < lean(best) { one } else { best })
  let column(part) = list(marker: text(fill: accent, [–]), body-indent: 0.4em, spacing: air.leading + 0.05em, ..part.map(words))
  grid(columns: (0.483fr, 0.517fr), column-gutter: 2mm, column(items.slice(0, cut)), column(items.slice(cut)))
}

#let large-callout(block, air) = std.block(
  width: 100%, breakable: false,
  inset: if block.tone == "stop" { (x: 2.5mm, y: 0.25em + air.gap * 0.5) } else { (left: 3mm, y: 0.1em) },
  stroke: if block.tone == "stop" { 2pt + ink } else { (left: 3pt + accent) },
  {
    if block.tone == "stop" {
      par(text(weight: 700, size: 1.08em, fill: ink, block.word))
      for line in block.lines { par(words(line)) }
    } else {
      par[#text(weight: 700)[#block.word.] #block.lines.map(words).join(linebreak())]
    }
    if block.items.len() > 0 { in-two(block.items, air) }
  },
)

// The first cell of a row names it over the whole width; only its last words stand in their column, beside the other cells.
#let large-rows(block, air, width) = {
  let shares = block.columns.map(column => column.share)
  let last = block.columns.len() - 1
  let below = 0.42em
  let plainly(piece) = piece.text.replace(regex("^[\n;, ]+"), "")
  let detail(piece, size: 12pt) = text(size: size, weight: if piece.kind == "small" { 400 } else { 600 }, plainly(piece))
  let row(pieces) = {
    let first = pieces.first()
    let above = first.slice(0, calc.max(1, first.len() - 1))
    let name = std.block(width: width, above: 0pt, below: 0pt, above.enumerate().map(((at, piece)) => if at == 0 { text(weight: 600, piece.text) } else { detail(piece) }).join([ ]))
    let push = measure({ set par(leading: air.leading * 0.9); name }).height + below.to-absolute()
    pieces.enumerate().map(((at, cell)) => {
      let column = block.columns.at(at)
      let body = if at == 0 { if first.len() > 1 { detail(first.last(), size: 11pt) } } else if column.weight == "strong" { text(weight: 600, words(cell)) } else { words(cell) }
      table.cell(breakable: false, { if at == 0 { name; v(below) } else { v(push) }; std.block(above: 0pt, below: 0pt, body) })
    })
  }
  set par(leading: air.leading * 0.9)
  figure(
    kind: table,
    caption: block.caption,
    table(
      columns: shares.map(share => share * 1fr),
      align: (x, _) => aligns.at(block.columns.at(x).align) + top,
      inset: (x, y) => (left: if x == 0 { 0pt } else { 3pt }, right: if x == last { 0pt } else { 3pt }, y: if y == 0 { 0.2em } else { 0.02em + air.gap * 0.5 }),
      stroke: (_, y) => if y == 0 { (bottom: 1pt + accent) } else { (bottom: hair) },
      table.header(..block.columns.map(column => text(size: 11.5pt, weight: 600, fill: accent, hyphenate: false, column.head))),
      ..block.rows.map(row).flatten(),
    ),
  )
}

#let large-block(block, air, width) = {
  if block.kind == "paragraph" and block.words.all(piece => piece.kind == "small") { par(text(size: 8.8pt, fill: quiet, block.words.map(piece => piece.text).join())) }
  else if block.kind == "paragraph" { par(words(block.words)) }
  else if block.kind == "list" { list(marker: text(fill: accent, [–]), body-indent: 0.5em, spacing: air.leading + 0.05em, ..block.items.map(words)) }
  else if block.kind == "table" { large-rows(block, air, width) }
  else if block.kind == "callout" { large-callout(block, air) }
  else if block.kind == "facts" { stack(spacing: air.gap, ..block.facts.map(fact => std.block(breakable: false, beside(term(fact.term), words(fact.value))))) }
  else { set-block(block) }
}

// A heading and what follows it, up to the next heading, box or row of facts.
#let parts(blocks) = {
  let found = ()
  for block in blocks {
    let own = block.kind in ("callout", "facts") or (block.kind == "paragraph" and block.words.all(piece => piece.kind == "small"))
    if block.kind == "heading" { found.push((head: block, body: ())) }
    else if own or found.len() == 0 or found.last().closed { found.push((head: none, body: (block,))) }
    else { let last = found.pop(); last.body.push(block); found.push(last) }
    let last = found.pop()
    found.push((head: last.head, body: last.body, closed: own))
  }
  found
}

#let large-part(part, air, width) = {
  let said = part.body.map(block => large-block(block, air, width))
  if part.head == none { said.join() }
  else if part.body.any(block => block.kind == "table") {
    // The caption of the table stands on the line of the heading.
    std.block(height: 0pt, above: 0pt, below: 0pt, large-heading(part.head))
    show figure.caption: it => std.block(sticky: true, width: 100%, inset: (left: left-width + 2mm, top: 1pt), align(left, text(size: 11.5pt, fill: quiet, it.body)))
    set figure(gap: 0.35em)
    show figure: set std.block(above: 0pt, below: air.gap)
    said.join()
  }
  else { std.block(breakable: false, beside(large-heading(part.head), said.join())) }
}

#let large-opening = {
  grid(
    columns: (1fr, auto), column-gutter: 6mm, align: (left + bottom, right + bottom),
    { set std.block(above: 0pt, below: 0pt); heading(level: 1, text(paper.title)) },
    text(size: 9pt, fill: quiet, [#paper.from #linebreak() #paper.date]),
  )
  std.block(above: 0.55em, text(size: 8.8pt, fill: quiet, paper.about))
}

#let large-body(air, width) = {
  set par(leading: air.leading, spacing: air.leading + 0.08em)
  set std.block(above: air.gap, below: air.gap)
  stack(spacing: air.gap, large-opening, ..parts(paper.blocks).map(part => large-part(part, air, width)))
}

#let large-sheet = layout(size => {
  let airs = ((0.58em, 1.05em), (0.55em, 0.95em), (0.53em, 0.86em), (0.51em, 0.78em), (0.49em, 0.7em), (0.47em, 0.63em), (0.45em, 0.57em), (0.44em, 0.52em), (0.43em, 0.48em), (0.42em, 0.44em)).map(((leading, gap)) => (leading: leading, gap: gap))
  let fits(air) = measure(std.block(width: size.width, large-body(air, size.width))).height <= size.height
  let air = airs.find(fits)
  large-body(if air == none { airs.at(3) } else { air }, size.width)
})
`
