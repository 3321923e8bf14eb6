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

/** As much as one animal may reasonably go home with: four medicines, one brought down, eye care, both ears. */
function worst(language: string): Paper {
  const make = entryMaker({}, 9)
  const right = { kind: 'operation', animal: 'animal-1', operation: 'operation-right' } as const
  const entries = exampleEntries().map((entry): Entry => {
    if (entry.kind === 'household') return { ...entry, body: { ...household.example, language } }
    if (entry.kind !== 'discharge') return entry
    const body = entry.body as unknown as BodyOf<'discharge'>
    return { ...entry, body: { ...body, medicines: [...body.medicines, tablet] } as unknown as Entry['body'] }
  })
  const hasHousehold = entries.some(({ kind }) => kind === 'household')
  const home = make({ kind: 'household', body: { ...household.example, language }, at: '2026-02-01T08:00:00.000Z' })
  const other = make({
    kind: 'operation-summary',
    at: '2026-02-10T12:40:00.000Z',
    subject: right,
    body: { ...operationSummary.example, side: 'RIGHT' },
  })
  const made = homePage.of(inputFor([...entries, ...(hasHousehold ? [] : [home]), other]))
  if (!isPaper(made)) throw new Error(made.because)
  return made
}

function approved(name: 'spaniel-going-home' | 'cat-going-home', language: string | null): Paper {
  const paper = papersOf(name, language).made.find(({ id }) => id === 'home-page')
  if (!paper) throw new Error(`${name} has no home page.`)
  return paper
}

const pages = [
  { name: 'a spaniel goes home', paper: () => approved('spaniel-going-home', null), words: homeInEnglish, usual: true },
  { name: 'the same, told in Spanish', paper: () => approved('spaniel-going-home', 'es'), words: homeInSpanish, usual: true },
  { name: 'a cat goes home', paper: () => approved('cat-going-home', null), words: homeInEnglish, usual: true },
  { name: 'four medicines, one brought down, both ears', paper: () => worst('en'), words: homeInEnglish, usual: false },
  { name: 'as much in Spanish', paper: () => worst('es'), words: homeInSpanish, usual: false },
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

describe.each(pages)('The home page when $name', ({ name, paper, words, usual }) => {
  let file: string
  let sheets: string[]
  beforeAll(() => {
    file = join(folder, `${name.replaceAll(/\W+/g, '-')}.pdf`)
    writeFileSync(file, press(paper()))
    sheets = read('pdftotext', file, '-').split('\f').slice(0, -1).map(plainly)
  })

  test('has on its first sheet when to phone, tonight, the next visit, and the medicines', () => {
    const [first = ''] = sheets
    for (const wanted of [words.phoneNow, words.tonight, words.next, words.medicines]) expect(first).toContain(wanted)
    for (const said of words.phoneNowItems.value) expect(first).toContain(said.split(' ').slice(0, 4).join(' '))
    const table = paper().blocks.find((block) => block.kind === 'table')
    if (table?.kind !== 'table') throw new Error('Somebody goes home without a medicine.')
    const named = table.rows.map((row) => runsOf(row[0] ?? '')[0]?.text.split(' ').slice(0, 3).join(' ') ?? '')
    const here = named.filter((start) => first.includes(start))
    // More than anybody usually goes home with runs on under a head of its own; it begins on the first sheet.
    expect(usual ? named.length - here.length : Math.max(0, 3 - here.length)).toBe(0)
    if (usual) return
    for (const start of [table.columns[0]?.head ?? '', ...named.filter((one) => !here.includes(one))])
      expect(sheets[1]).toContain(start)
  })

  test('is no more than the two sides of one sheet of A4', () => {
    expect(read('pdfinfo', file)).toMatch(/Page size: +595\.\d+ x 841\.\d+ pts \(A4\)/)
    expect(sheets.length).toBeLessThanOrEqual(2)
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
