import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { loadFonts } from '#server/fonts.ts'
import { homeInEnglish } from '#content/wording/home.ts'
import { homeInSpanish } from '#content/wording/spanish/home.ts'
import type { HomeMedicine } from '#core/home/medicine-times.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { household } from '#core/journal/kinds/household.ts'
import { operationSummary } from '#core/journal/kinds/operation-summary.ts'
import { isPaper } from '#documents/case/paper-input.ts'
import { exampleEntries, inputFor } from '#documents/case/sample-case-for-tests.ts'
import { homePage } from '#documents/home-page/home-page.ts'
import { type Paper, runsOf } from '#documents/render/model.ts'
import { type PdfPress, pdfPress } from '#documents/render/pdf.ts'
import { ensureDebian } from '../../scripts/ensure-debian.mjs'
import { papersOf } from './papers-of.ts'

/** The page for the kitchen door as it comes out of the printer: how many sheets, what stands on the first, how large. */

const tablet: HomeMedicine = {
  drug: 'invented',
  label: 'Inventine tablet 5 mg',
  purpose: 'swelling',
  form: 'tablet',
  strength: { value: '5', unit: 'mg/{tablet}' },
  each: '2',
  side: null,
  times: ['08:00', '20:00'],
  firstDay: '2026-02-12',
  firstTime: '20:00',
  days: 21,
  onDays: 'every-day',
  withFood: 'yes',
  steps: [
    { fromDay: '2026-02-17', each: '1', times: ['08:00', '20:00'], onDays: 'every-day' },
    { fromDay: '2026-02-22', each: '1', times: ['08:00'], onDays: 'every-second-day' },
  ],
}

/** Of a drug that the formulary knows: a page with an unknown one is held back, and says so at its head. */
const plain: HomeMedicine = {
  ...tablet,
  drug: 'gabapentin',
  label: 'Otherine capsules 100 mg',
  strength: { value: '100', unit: 'mg/{tablet}' },
  each: '1',
  days: 10,
  steps: [],
}

/** A spaniel that goes home with these besides its own three medicines; in the end with both ears. */
function wellSupplied(language: string, more: readonly HomeMedicine[], ears: 'one' | 'both'): Paper {
  const make = entryMaker({}, 9)
  const right = { kind: 'operation', animal: 'animal-1', operation: 'operation-right' } as const
  const entries = exampleEntries().map((entry): Entry => {
    if (entry.kind === 'household') return { ...entry, body: { ...household.example, language } }
    if (entry.kind !== 'discharge') return entry
    const body = entry.body as unknown as BodyOf<'discharge'>
    return { ...entry, body: { ...body, medicines: [...body.medicines, ...more] } as unknown as Entry['body'] }
  })
  const hasHousehold = entries.some(({ kind }) => kind === 'household')
  const home = make({ kind: 'household', body: { ...household.example, language }, at: '2026-02-01T08:00:00.000Z' })
  const other = make({
    kind: 'operation-summary',
    at: '2026-02-10T12:40:00.000Z',
    subject: right,
    body: { ...operationSummary.example, side: 'RIGHT' },
  })
  const made = homePage.of(inputFor([...entries, ...(hasHousehold ? [] : [home]), ...(ears === 'both' ? [other] : [])]))
  if (!isPaper(made)) throw new Error(made.because)
  return made
}

function approved(name: 'spaniel-going-home' | 'cat-going-home', language: string | null): Paper {
  const paper = papersOf(name, language).made.find(({ id }) => id === 'home-page')
  if (!paper) throw new Error(`${name} has no home page.`)
  return paper
}

const usual = { sides: 1, atLeast: 3 }
// More than anybody usually goes home with runs on, under a head of its own; most of it stands on the first side.
const rare = { sides: 2, atLeast: 4 }
const pages = [
  { name: 'a spaniel goes home', paper: () => approved('spaniel-going-home', null), words: homeInEnglish, ...usual },
  { name: 'the same, told in Spanish', paper: () => approved('spaniel-going-home', 'es'), words: homeInSpanish, ...usual },
  { name: 'a cat goes home', paper: () => approved('cat-going-home', null), words: homeInEnglish, ...usual },
  { name: 'a cat of a Spanish household', paper: () => approved('cat-going-home', 'es'), words: homeInSpanish, ...usual },
  { name: 'four medicines', paper: () => wellSupplied('en', [plain], 'one'), words: homeInEnglish, ...usual, atLeast: 4 },
  { name: 'four in Spanish', paper: () => wellSupplied('es', [plain], 'one'), words: homeInSpanish, ...usual, atLeast: 4 },
  { name: 'four, one brought down, both ears', paper: () => wellSupplied('en', [tablet], 'both'), words: homeInEnglish, ...rare },
  { name: 'as much in Spanish', paper: () => wellSupplied('es', [tablet], 'both'), words: homeInSpanish, ...rare },
  { name: 'six', paper: () => wellSupplied('en', [plain, tablet, { ...plain, label: 'Thirdine 1 mg', drug: 'third' }], 'one'), words: homeInEnglish, ...rare },
]

let folder: string
let press: PdfPress
beforeAll(() => {
  ensureDebian(['poppler-utils'])
  folder = mkdtempSync(join(tmpdir(), 'quiet-ear-home-page-'))
  press = pdfPress(loadFonts())
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const read = (tool: string, ...words: string[]) => execFileSync(tool, words, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] })
const plainly = (text: string) => text.replaceAll(/[\u200b\u00ad]/g, '').replaceAll(/\s+/g, ' ')

describe.each(pages)('The home page when $name', ({ name, paper, words, sides, atLeast }) => {
  let file: string
  let sheets: string[]
  beforeAll(() => {
    file = join(folder, `${name.replaceAll(/\W+/g, '-')}.pdf`)
    writeFileSync(file, press(paper()))
    sheets = read('pdftotext', '-raw', file, '-').split('\f').slice(0, -1).map(plainly)
  })

  test(`is ${sides === 1 ? 'one side' : 'no more than the two sides of one sheet'} of A4, and says so where it goes on`, () => {
    expect(read('pdfinfo', file)).toMatch(/Page size: +595\.\d+ x 841\.\d+ pts \(A4\)/)
    expect(sheets).toHaveLength(sides)
    expect(sheets.map((sheet) => sheet.includes(words.turnOver))).toEqual(sides === 1 ? [false] : [true, false])
  })

  test('says first when to phone and on which number, then tonight, the next visit, the medicines, and the rest after them', () => {
    const all = sheets.join(' ')
    const order = [words.phoneNow, '01632', words.newSignWord, words.tonight, words.next, words.medicines, words.eye, words.collar]
    const from = all.indexOf(words.phoneNow)
    const places = order.map((one) => all.indexOf(one, from))
    expect(places).not.toContain(-1)
    expect(places).toEqual([...places].sort((a, b) => a - b))
    const [first = ''] = sheets
    for (const wanted of order.slice(0, 6)) expect(first).toContain(wanted)
    for (const said of words.phoneNowItems.value) expect(first).toContain(said.split(' ').slice(0, 4).join(' '))
  })

  test('names every medicine, the most of them on the first side', () => {
    const table = paper().blocks.find((block) => block.kind === 'table')
    if (table?.kind !== 'table') throw new Error('Somebody goes home without a medicine.')
    const named = table.rows.map((row) => runsOf(row[0] ?? '')[0]?.text ?? '')
    const here = named.filter((one) => sheets[0]?.includes(one))
    expect(here.length).toBeGreaterThanOrEqual(Math.min(named.length, atLeast))
    if (here.length === named.length) return
    for (const one of [table.columns[0]?.head ?? '', ...named.filter((it) => !here.includes(it))])
      expect(sheets[1]).toContain(one)
  })

  test('is set in letters of 14 points', () => {
    const xml = read('pdftohtml', '-xml', '-stdout', '-i', '-zoom', '1', file)
    const sizes = new Map([...xml.matchAll(/<fontspec id="(\d+)" size="(\d+)"/g)].map(([, id, size]) => [id, Number(size)]))
    const letters = new Map<number, number>()
    for (const [, font, text = ''] of xml.matchAll(/<text [^>]*font="(\d+)"[^>]*>(.*?)<\/text>/g)) {
      const size = sizes.get(font) ?? 0
      letters.set(size, (letters.get(size) ?? 0) + text.replaceAll(/<[^>]*>/g, '').length)
    }
    const [most] = [...letters].sort((a, b) => b[1] - a[1])
    expect(most?.[0]).toBe(14)
  })
})
