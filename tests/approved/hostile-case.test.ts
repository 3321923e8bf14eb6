import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { loadFonts } from '#server/fonts.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Entry } from '#core/journal/entry.ts'
import { isPaper } from '#documents/case/paper-input.ts'
import { exampleEntries, fileAround, inputFor } from '#documents/case/sample-case-for-tests.ts'
import { papers } from '#documents/index.ts'
import { renderHtml } from '#documents/render/html.ts'
import type { Paper } from '#documents/render/model.ts'
import { pdfPress } from '#documents/render/pdf.ts'
import { renderText } from '#documents/render/text.ts'
import { ensureDebian } from '../../scripts/ensure-debian.mjs'

/** A name as a careless or spiteful person types it, in markup of three kinds at once. */
const hostile = '#panic("x") $y$ *_`<script>alert(1)</script>&amp; {name} [1] @a'

let folder: string
beforeAll(() => {
  ensureDebian(['poppler-utils', 'qpdf'])
  folder = mkdtempSync(join(tmpdir(), 'quiet-ear-hostile-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

/** Puts the hostile text where people write freely: names, reasons, remarks. */
function spoiled(entry: Entry): Entry {
  const body = entry.body as Record<string, unknown>
  const free = ['name', 'breed', 'text', 'because', 'indication', 'findings', 'plan', 'label', 'complaint', 'food']
  const spoil = Object.fromEntries(
    free
      .filter((key) => typeof body[key] === 'string')
      .map((key) => [key, entry.kind === 'planned-line' ? body[key] : hostile]),
  )
  return { ...entry, body: { ...body, ...spoil } as Entry['body'] }
}

function hostileFile(entries = exampleEntries()): CaseFile {
  const file = fileAround(entries.map(spoiled), hostile)
  const renamed = <Row extends { readonly name: string }>(rows: ReadonlyMap<string, Row>) =>
    new Map([...rows].map(([id, row]) => [id, { ...row, name: hostile }]))
  return { ...file, people: renamed(file.people), contacts: renamed(file.contacts) }
}

const file = hostileFile()
/** Syringes are labelled, and a sheet is printed for the pen, before the cut only. */
const beforeOnly: ReadonlySet<string> = new Set(['syringe-labels', 'theatre-sheet'])
const beforeTheCut = hostileFile(
  exampleEntries().filter(({ kind }) => kind !== 'operation-summary' && kind !== 'theatre-stamp'),
)
const made = papers.flatMap((paper): Paper[] => {
  const one = paper.of({ ...inputFor([]), file: beforeOnly.has(paper.id) ? beforeTheCut : file })
  return isPaper(one) ? [one] : []
})

test('Every paper of the case is made', () => {
  expect(made.map(({ id }) => id)).toEqual(papers.map(({ id }) => id))
})

test.each(made.map((paper) => [paper.id, paper] as const))(
  '%s shows a hostile name literally as text, page and PDF',
  (id, paper) => {
    expect(renderText(paper)).toContain(hostile)
    const html = renderHtml(paper)
    expect(html).not.toContain('<script')
    expect(html).toContain('&lt;script&gt;alert(1)&lt;/script&gt;&amp;amp;')
    const target = join(folder, `${id}.pdf`)
    writeFileSync(target, pdfPress(loadFonts())(paper))
    const read = execFileSync('pdftotext', [target, '-'], { encoding: 'utf8' })
    expect(unspaced(read)).toContain(unspaced(hostile))
  },
)

function unspaced(text: string): string {
  return text.replaceAll(/[\s\u200b]/g, '')
}
