import { papersInEnglish } from '#content/wording/papers.ts'
import { never } from '#core/outcome/outcome.ts'
import { printStyle } from './html-style.ts'
import { Html } from './markup.ts'
import { type Block, type Label, type Paper, printable, runsOf, type Table, type Words } from './model.ts'

/** The paper as one self-contained page: no script, no other file, print style inside. */
export function renderHtml(paper: Paper): string {
  const caution = paper.caution === null ? '' : `<p class="caution">${escaped(paper.caution)}</p>`
  return `<!doctype html>
<html lang="${escaped(paper.language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(paper.title)} – ${escaped(paper.about)}</title>
<style>${printStyle}</style>
</head>
<body class="${paper.print}">
<header><p>${escaped(paper.from)}</p></header>
<main>
<h1>${escaped(paper.title)}</h1>
<p class="about" dir="auto">${escaped(paper.about)}</p>
<p class="date">${escaped(paper.date)}</p>
${caution}
${paper.blocks.map(blockHtml).join('\n')}
</main>
<footer>${caution}<p>${escaped(paper.provenance)}</p></footer>
</body>
</html>
`
}

/** Blocks alone, to stand in a page of another kind. */
export function blocksHtml(blocks: readonly Block[]): Html {
  return new Html(blocks.map(blockHtml).join('\n'))
}

function blockHtml(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `<h${block.level + 1} dir="auto">${escaped(block.text)}</h${block.level + 1}>`
    case 'paragraph':
      return `<p dir="auto">${inline(block.words)}</p>`
    case 'list': {
      const tag = block.numbered ? 'ol' : 'ul'
      const lang = block.language === undefined ? '' : ` lang="${escaped(block.language)}"`
      return `<${tag}${lang}>${block.items.map((item) => `<li dir="auto">${inline(item)}</li>`).join('')}</${tag}>`
    }
    case 'table':
      return tableHtml(block)
    case 'callout':
      return `<aside class="${block.tone}" aria-label="${escaped(block.word)}"><p class="word">${escaped(block.word)}</p>${block.lines
        .map((line) => `<p dir="auto">${inline(line)}</p>`)
        .join('')}${itemsHtml(block.items ?? [])}</aside>`
    case 'facts':
      return `<dl>${block.facts
        .map(({ term, value }) => `<div><dt>${escaped(term)}</dt><dd dir="auto">${inline(value)}</dd></div>`)
        .join('')}</dl>`
    case 'signatures':
      return `<div class="signatures">${block.lines
        .map(
          (line) =>
            `<p><span>${escaped(line)}</span><span>${escaped(block.date ?? papersInEnglish.signedOn)}</span></p>`,
        )
        .join('')}</div>`
    case 'big':
      return `<p class="big">${escaped(block.text)}${block.note === null ? '' : `<small>${escaped(block.note)}</small>`}</p>`
    case 'picture':
      return `<figure class="picture">${inPage(block.svg)}<figcaption dir="auto">${escaped(block.caption)}</figcaption></figure>`
    case 'labels':
      return `<ul class="labels">${block.labels.map(labelHtml).join('\n')}</ul>`
    case 'page-break':
      return '<div class="page-break"></div>'
    default:
      return never(block)
  }
}

function itemsHtml(items: readonly Words[]): string {
  return items.length === 0 ? '' : `<ul>${items.map((item) => `<li dir="auto">${inline(item)}</li>`).join('')}</ul>`
}

function labelHtml({ name, big, of, lines, blanks }: Label): string {
  const said = lines.map((line) => `<p dir="auto">${inline(line)}</p>`)
  const open = blanks.map((blank) => `<p class="blank">${escaped(blank)}</p>`)
  const head = `<p class="name" dir="auto">${escaped(name)}</p><p class="volume">${escaped(big)} <small>${escaped(of)}</small></p>`
  return `<li>${[head, ...said, ...open].join('')}</li>`
}

/** Inside a page an SVG needs no name space; without it the page names no other address. */
function inPage(svg: string): string {
  return svg.replace(' xmlns="http://www.w3.org/2000/svg"', '')
}

function tableHtml({ caption, columns, rows, rowHeader }: Table): string {
  const classOf = (at: number) => ` class="${columns[at]?.align ?? 'left'} ${columns[at]?.weight ?? 'plain'}"`
  const heads = columns
    .map(({ head }, at) => `<th scope="col" role="columnheader"${classOf(at)}>${escaped(head)}</th>`)
    .join('')
  const body = rows
    .map((row) => {
      const cells = row.map((cell, at) =>
        rowHeader && at === 0
          ? `<th scope="row" role="rowheader" dir="auto"${classOf(at)}>${inline(cell)}</th>`
          : `<td role="cell" dir="auto" data-head="${escaped(columns[at]?.head ?? '')}"${classOf(at)}>${inline(cell)}</td>`,
      )
      return `<tr role="row">${cells.join('')}</tr>`
    })
    .join('\n')
  return `<table role="table"><caption>${escaped(caption)}</caption><thead><tr role="row">${heads}</tr></thead><tbody>\n${body}\n</tbody></table>`
}

function inline(words: Words): string {
  return runsOf(words)
    .map(({ kind, text }) => {
      switch (kind) {
        case 'text':
          return escaped(text)
        case 'strong':
          return `<strong>${escaped(text)}</strong>`
        case 'small':
          return `<small>${escaped(text)}</small>`
        default:
          return never(kind)
      }
    })
    .join('')
}

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

function escaped(text: string): string {
  return printable(text).replaceAll(/[&<>"']/g, (character) => entities[character] ?? character)
}
