import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { loadFonts } from '#server/fonts.ts'
import { cautionInSpanish } from '#content/wording/spanish/caution.ts'
import { aboutTheSpanish } from '#content/wording/spanish/translation.ts'
import { renderHtml } from '#documents/render/html.ts'
import type { Paper } from '#documents/render/model.ts'
import { type PdfPress, pdfPress } from '#documents/render/pdf.ts'
import { renderText } from '#documents/render/text.ts'
import { ensureDebian } from '../../scripts/ensure-debian.mjs'
import { calendarFor, papersOf } from './papers-of.ts'

/** The household of an invented case, as if it spoke Spanish. `APPROVE=1` writes what is made now as what is approved. */
const place = fileURLToPath(new URL('./spaniel-going-home-es', import.meta.url))
const ids = ['agreement-sheet', 'home-page', 'owner-leaflet'] as const
const theirs = papersOf('spaniel-going-home', 'es-MX').made
const inEnglish = papersOf('spaniel-going-home', 'en').made

let folder: string
let press: PdfPress
beforeAll(() => {
  ensureDebian(['poppler-utils', 'qpdf'])
  folder = mkdtempSync(join(tmpdir(), 'quiet-ear-spanish-'))
  press = pdfPress(loadFonts())
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

function named(papers: readonly Paper[], wanted: string): Paper {
  const paper = papers.find(({ id }) => id === wanted)
  if (!paper) throw new Error(`There is no ${wanted}.`)
  return paper
}

function tool(name: string, ...words: string[]): string {
  return execFileSync(name, words, { encoding: 'latin1', stdio: ['ignore', 'pipe', 'pipe'] })
}

function compare(file: string, now: string): void {
  if (process.env.APPROVE === '1') {
    mkdirSync(place, { recursive: true })
    writeFileSync(join(place, file), now)
    return
  }
  expect(now).toBe(readFileSync(join(place, file), 'utf8'))
}

/**
 * Every number in the order it stands, dates too: the month is a word in both. Lines about the reading level differ by
 * right, and so does the mark of the plan, which covers the language.
 */
function numbersOf(text: string): string[] {
  const differs = /Flesch|Fern.ndez Huerta|(?: [0-9a-f]{4}){4}$/
  const lines = text.split('\n').filter((line) => !differs.test(line))
  return lines.join('\n').match(/\d+(?:[.,]\d+)*/g) ?? []
}

describe.each(ids)('The %s of a household that speaks Spanish', (id) => {
  const paper = named(theirs, id)

  test('reads as it was approved', () => {
    compare(`${id}.txt`, renderText(paper))
  })

  test('has each number of the English one, as often', () => {
    const english = numbersOf(renderText(named(inEnglish, id))).sort()
    expect(english.length).toBeGreaterThan(10)
    expect(numbersOf(renderText(paper)).sort()).toEqual(english)
  })

  test('says its language to a browser and in the PDF, the caution in Spanish, and who translated it', () => {
    expect(renderHtml(paper)).toContain('<html lang="es">')
    const file = join(folder, `${id}.pdf`)
    writeFileSync(file, press(paper))
    expect(tool('qpdf', '--qdf', '--object-streams=disable', file, '-')).toMatch(/\/Lang \(es\)/)
    expect(tool('pdfinfo', file)).toMatch(/Tagged:\s+yes/)
    expect(renderText(paper)).toContain(cautionInSpanish)
    expect(renderText(paper)).toContain(aboutTheSpanish)
  })
})

test('The numbers kept in the agreement are said in the language of the household', () => {
  const [spanish, english] = [theirs, inEnglish].map((papers) => renderText(named(papers, 'agreement-sheet')))
  expect(english).toContain('In one study of 309 dogs')
  expect(spanish).toContain('En un estudio de 309 perros')
  expect(spanish).not.toMatch(/\bdogs\b/)
})

test('The calendar of the household is in Spanish, with the same times', () => {
  const [spanish, english] = [calendarFor('spaniel-going-home', 'es-MX'), calendarFor('spaniel-going-home', 'en')]
  compare('calendar.ics', spanish)
  const times = (text: string) => text.split('\r\n').filter((line) => /^(DT|RRULE|UID|TRIGGER|SEQUENCE)/.test(line))
  expect(times(spanish)).toEqual(times(english))
  expect(spanish).toContain('visita')
})

test('Papers of the clinic stay in English', () => {
  // The whole record is in English too; the language of the household is one of the things that it says.
  const clinics = theirs.filter(({ id }) => id !== 'whole-record' && !ids.some((one) => one === id))
  for (const paper of clinics) {
    expect(renderText(paper)).toBe(renderText(named(inEnglish, paper.id)))
  }
})

test('The home page in Spanish is one side of one sheet of paper too', () => {
  const file = join(folder, 'pages.pdf')
  writeFileSync(file, press(named(theirs, 'home-page')))
  const pages = Number(/Pages:\s+(\d+)/.exec(tool('pdfinfo', file))?.[1])
  expect(pages).toBe(1)
})
