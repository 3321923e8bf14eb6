import { execFileSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { loadFonts } from '#server/fonts.ts'
import { caution } from '#content/wording/caution.ts'
import type { Entry } from '#core/journal/entry.ts'
import { isPaper } from '#documents/case/paper-input.ts'
import { exampleEntries, inputFor } from '#documents/case/sample-case-for-tests.ts'
import { emergencySheetPaper } from '#documents/emergency-sheet/emergency-sheet.ts'
import { renderHtml } from '#documents/render/html.ts'
import type { Paper } from '#documents/render/model.ts'
import { type PdfPress, pdfPress } from '#documents/render/pdf.ts'
import { renderText } from '#documents/render/text.ts'
import { ensureDebian } from '../../scripts/ensure-debian.mjs'
import { approvedCases, papersOf } from './papers-of.ts'

const here = fileURLToPath(new URL('.', import.meta.url))
/** `APPROVE=1` writes what is made now as what is approved; read the difference before it is committed. */
const approving = process.env.APPROVE === '1'

let folder: string
let press: PdfPress

beforeAll(() => {
  ensureDebian(['poppler-utils', 'qpdf'])
  folder = mkdtempSync(join(tmpdir(), 'quiet-ear-papers-'))
  press = pdfPress(loadFonts())
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function tool(name: string, ...words: string[]): string {
  return execFileSync(name, words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] })
}

/** The page's line breaks and break opportunities are not the paper's words. */
function unspaced(text: string): string {
  return text.replaceAll(/[\s\u200b]/g, '')
}

describe.each(approvedCases)('The papers of the invented case %s', (name) => {
  const { made, notYet } = papersOf(name)
  const place = join(here, name)

  test('are those that were approved, and the others say why they are not there yet', () => {
    if (approving) rmSync(place, { recursive: true, force: true })
    const list = `${[...made.map(({ id }) => id), ...notYet].sort().join('\n')}\n`
    compare(join(place, 'papers.list'), list)
    if (approving) return
    const kept = readdirSync(place).filter((file) => file.endsWith('.txt'))
    expect(kept.sort()).toEqual(made.map(({ id }) => `${id}.txt`).sort())
  })

  test.each(made.map((paper) => [paper.id, paper] as const))('%s reads as a colleague approved it', (id, paper) => {
    compare(join(place, `${id}.txt`), renderText(paper))
  })

  test.each(made.map((paper) => [paper.id, paper] as const))(
    '%s is a clean, tagged PDF with its fonts',
    (id, paper) => {
      const file = printed(`${name}-${id}`, paper)
      expect(tool('pdfinfo', file)).toMatch(/Tagged:\s+yes/)
      expect(tool('qpdf', '--check', file)).toContain('No syntax or stream encoding errors found')
      const fonts = tool('pdffonts', file).trim().split('\n').slice(2)
      for (const font of fonts) expect(font).toMatch(/ yes yes yes +\d+ +\d+$/)
      const tables = paper.blocks.filter((block) => block.kind === 'table')
      const heads = tables.reduce((sum, table) => sum + table.columns.length, 0)
      const tags = tool('pdfinfo', '-struct-text', file)
      expect(tags.match(/^\s*TH\b/gm)?.length ?? 0).toBeGreaterThanOrEqual(heads)
      expect(tags.match(/^\s*Caption\b/gm)?.length ?? 0).toBe(tables.length)
    },
  )

  test.each(made.map((paper) => [paper.id, paper] as const))('%s carries the caution on every page', (id, paper) => {
    const pages = pagesOf(printed(`${name}-${id}`, paper))
    for (const page of pages) expect(unspaced(page)).toContain(unspaced(caution))
  })

  test.each(made.map((paper) => [paper.id, paper] as const))('%s says the same as a web page', (_, paper) => {
    const html = renderHtml(paper)
    const headings = paper.blocks.flatMap((block) => (block.kind === 'heading' ? [block] : []))
    expect(html.match(/<h[2-4] /g) ?? []).toHaveLength(headings.length)
    expect(html.match(/<table\b/g) ?? []).toHaveLength(paper.blocks.filter(({ kind }) => kind === 'table').length)
  })

  function printed(title: string, paper: Paper): string {
    const file = join(folder, `${title}.pdf`)
    if (!existsSync(file)) writeFileSync(file, press(paper))
    return file
  }
})

test('All that is read in an emergency stands on the first page of its sheet', () => {
  for (const name of approvedCases) {
    const sheet = papersOf(name).made.find(({ id }) => id === 'emergency-sheet')
    if (!sheet) throw new Error('Each case has a weight.')
    const [first = ''] = pagesOf(write('first-page', sheet))
    expect(unspaced(first)).toContain('Nopulse')
    expect(unspaced(first)).toContain('Shockenergyforthisweight')
    expect(unspaced(first)).toContain('ontheheart')
    expect(unspaced(first)).toContain('Editionsonthissheet:')
    expect(unspaced(first)).toContain('standsonthenextpage.')
  }
})

const weights = ['0.4', '1.2', '3', '8.2', '9.9', '45', '78']
test.each(weights.flatMap((kilograms) => [['dog', kilograms] as const, ['cat', kilograms] as const]))(
  'The wall page of a %s of %s kg is one page, whatever has to be diluted',
  (species, kilograms) => {
    const entries = exampleEntries()
      .filter(({ kind }) => kind === 'identity' || kind === 'weight')
      .map((entry) =>
        entry.kind === 'weight' ? weighing(entry, kilograms) : changed(entry, { species }),
      )
    const sheet = emergencySheetPaper.of(inputFor(entries))
    if (!isPaper(sheet)) throw new Error(sheet.because)
    const [first = ''] = pagesOf(write(`wall-${species}-${kilograms}`, sheet))
    expect(unspaced(first)).toContain('Nopulse')
    expect(unspaced(first)).toContain('standsonthenextpage.')
  },
)

function weighing(entry: Entry, value: string): Entry {
  return changed(entry, { weight: { value, unit: 'kg' } })
}

function changed(entry: Entry, body: Readonly<Record<string, unknown>>): Entry {
  return { ...entry, body: { ...(entry.body as object), ...body } as Entry['body'] }
}

test('All that is drawn from stands on the first page of the dose sheet, and the labels are one sheet', () => {
  for (const name of approvedCases) {
    for (const sheet of papersOf(name).made) {
      const pages = ['dose-sheet', 'syringe-labels'].includes(sheet.id) ? pagesOf(write(`one-${name}`, sheet)) : []
      if (sheet.id === 'syringe-labels') expect(pages).toHaveLength(1)
      if (sheet.id !== 'dose-sheet') continue
      for (const words of ['Draw', 'Ceilingofthewholeanimal', 'Secondcheckby', 'standsonthenextpage.'])
        expect(unspaced(pages[0] ?? '')).toContain(words)
    }
  }
})

test('The home page is one side of one sheet of paper', () => {
  for (const name of approvedCases) {
    const page = papersOf(name).made.find(({ id }) => id === 'home-page')
    if (page) expect(pagesOf(write('home', page))).toHaveLength(1)
  }
})

function write(title: string, paper: Paper): string {
  const file = join(folder, `${title}.pdf`)
  writeFileSync(file, press(paper))
  return file
}

function pagesOf(file: string): string[] {
  return tool('pdftotext', '-layout', file, '-').split('\f').slice(0, -1)
}

function compare(file: string, now: string): void {
  if (approving) {
    mkdirSync(join(file, '..'), { recursive: true })
    writeFileSync(file, now)
    return
  }
  expect(now).toBe(readFileSync(file, 'utf8'))
}
