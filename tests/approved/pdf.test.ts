import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { loadFonts } from '#server/fonts.ts'
import { pdfPress } from '#documents/render/pdf.ts'
import { hostile, samplePaper } from '#documents/render/sample-for-tests.ts'
import { ensureDebian } from '../../scripts/ensure-debian.mjs'
import { allTagged, structureOf } from './pdf-structure.ts'

let folder: string
let file: string
let bytes: Uint8Array

beforeAll(() => {
  ensureDebian(['poppler-utils', 'qpdf'])
  folder = mkdtempSync(join(tmpdir(), 'quiet-ear-pdf-'))
  file = join(folder, 'sample.pdf')
  bytes = pdfPress(loadFonts())(samplePaper)
  writeFileSync(file, bytes)
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function tool(name: string, ...words: string[]): string {
  return execFileSync(name, words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] })
}

/** Line breaks and break opportunities are the page's, not the person's. */
function unspaced(text: string): string {
  return text.replaceAll(/[\s\u200b\u00ad\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, '')
}

test('The PDF is tagged, says its title and language, and has the pages it should', () => {
  const info = tool('pdfinfo', file)
  expect(info).toMatch(/Tagged:\s+yes/)
  expect(info).toContain(`Title:           ${samplePaper.title}`)
  expect(tool('pdfinfo', '-meta', file)).toContain('<pdfuaid:part>1</pdfuaid:part>')
  expect(tool('qpdf', '--qdf', '--object-streams=disable', file, '-')).toMatch(/\/Lang \(en(-GB)?\)/)
})

test('Headings, lists, the caption and the heads of tables are real ones in the tags', () => {
  const tags = tool('pdfinfo', '-struct-text', file)
  for (const tag of ['H1', 'H2', 'H3', 'H4', 'LI', 'Caption', 'Table', 'THead', 'TH', 'TD']) {
    expect(tags).toMatch(new RegExp(`^\\s*${tag}\\b`, 'm'))
  }
  expect(tags.match(/\/Scope \/Column/g)).toHaveLength(2)
})

test('Words in another language than that of the paper say so in the tags', () => {
  const marked = allTagged(structureOf(file).top, /./).filter(({ language }) => language === 'es')
  expect(marked.length).toBeGreaterThan(0)
})

test('Every font is inside the file', () => {
  const rows = tool('pdffonts', file).trim().split('\n').slice(2)
  expect(rows.length).toBeGreaterThan(2)
  for (const row of rows) expect(row).toMatch(/ yes yes yes +\d+ +\d+$/)
})

test('An independent reader finds nothing wrong with the file', () => {
  expect(tool('qpdf', '--check', file)).toContain('No syntax or stream encoding errors found')
})

test('What a person typed is read back literally from the PDF', () => {
  const read = unspaced(tool('pdftotext', file, '-'))
  const rightToLeft = /[\u0590-\u06ff]/
  for (const typed of hostile) {
    // Extraction turns right-to-left words round in ways of its own; their letters must be there.
    const wanted = rightToLeft.test(typed) ? ['😀'] : [unspaced(typed)]
    for (const piece of wanted) expect(read).toContain(piece)
  }
  const letters = new Set(read)
  for (const letter of unspaced('שלום')) expect(letters).toContain(letter)
})

test('The caution stands on every page, and pages are numbered', () => {
  const pages = tool('pdftotext', file, '-').split('\f').slice(0, -1)
  expect(pages.length).toBeGreaterThan(1)
  pages.forEach((page, index) => {
    expect(page).toContain('Decision support for licensed veterinary professionals.')
    expect(page).toMatch(new RegExp(`\\b${index + 1} ?/ ?${pages.length}\\b`))
  })
})

test('The same paper gives the same bytes, from another press too', () => {
  const press = pdfPress(loadFonts())
  expect(Buffer.from(press(samplePaper)).equals(Buffer.from(bytes))).toBe(true)
  expect(Buffer.from(press(samplePaper)).equals(Buffer.from(bytes))).toBe(true)
})
