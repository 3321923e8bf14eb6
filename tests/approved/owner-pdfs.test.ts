import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { loadFonts } from '#server/fonts.ts'
import { type PdfPress, pdfPress } from '#documents/render/pdf.ts'
import { ensureDebian } from '../../scripts/ensure-debian.mjs'
import { papersOf } from './papers-of.ts'
import { allTagged, type Structure, structureOf, type Tagged } from './pdf-structure.ts'

/** What an owner takes home before the operation, opened as a file and its tags read back. */
const ids = ['owner-leaflet', 'agreement-sheet'] as const
const tongues = [
  ['en', /^en(-GB)?$/, /^Line drawing of the LEFT ear of a dog/],
  ['es-MX', /^es$/, /^Dibujo de líneas del oído IZQUIERDO de un perro/],
] as const
const every = ids.flatMap((id) => tongues.map(([language, lang, drawn]) => ({ id, language, lang, drawn })))

let folder: string
let press: PdfPress
beforeAll(() => {
  ensureDebian(['qpdf'])
  folder = mkdtempSync(join(tmpdir(), 'quiet-ear-owner-pdfs-'))
  press = pdfPress(loadFonts())
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const papers = new Map(tongues.map(([language]) => [language, papersOf('spaniel-going-home', language).made]))

function paperNamed(id: string, language: (typeof tongues)[number][0]) {
  const paper = papers.get(language)?.find((one) => one.id === id)
  if (!paper) throw new Error(`There is no ${id}.`)
  return paper
}

describe.each(every)('The PDF of the $id in $language', ({ id, language, lang, drawn }) => {
  const paper = paperNamed(id, language)
  let read: Structure
  let found: (wanted: RegExp) => Tagged[]
  beforeAll(() => {
    const file = join(folder, `${id}-${language}.pdf`)
    writeFileSync(file, press(paper))
    read = structureOf(file)
    found = (wanted) => allTagged(read.top, wanted)
  })

  test('says its language and its title, and a reader shows the title', () => {
    expect(read.language).toMatch(lang)
    expect(read.title).toBe(`${paper.title} – ${paper.about}`)
    expect(read.showsTitle).toBe(true)
    expect(read.top.map(({ tag }) => tag)).toEqual(['Document'])
  })

  test('has every heading of the paper in its order, one of the first level, and no level is skipped', () => {
    const headings = found(/^H\d$/)
    const wanted = paper.blocks.flatMap((block) =>
      block.kind === 'heading' ? [[`H${block.level + 1}`, block.text] as const] : [],
    )
    expect(wanted.length).toBeGreaterThan(4)
    expect(headings.map(({ tag, title }) => [tag, title])).toEqual([['H1', paper.title], ...wanted])
    const levels = headings.map(({ tag }) => Number(tag.slice(1)))
    for (const [at, level] of levels.entries()) expect(level - (levels[at - 1] ?? 0)).toBeLessThanOrEqual(1)
  })

  test('heads every column of every table, and every cell knows the head of its column', () => {
    const tables = found(/^Table$/)
    const wanted = paper.blocks.flatMap((block) => (block.kind === 'table' ? [block] : []))
    expect(tables).toHaveLength(wanted.length)
    expect(wanted.length > 0).toBe(id === 'owner-leaflet')
    for (const [at, table] of tables.entries()) {
      const { columns = [], rows = [] } = wanted[at] ?? {}
      const heads = allTagged(table.inside, /^TH$/).filter(({ scope }) => scope === 'Column')
      expect(heads).toHaveLength(columns.length)
      expect(allTagged(table.inside, /^THead$/)).toHaveLength(1)
      const body = allTagged(table.inside, /^TBody$/).flatMap(({ inside }) => allTagged(inside, /^TR$/))
      expect(body).toHaveLength(rows.length)
      for (const row of body) {
        const cells = allTagged(row.inside, /^T[DH]$/)
        expect(cells.map(({ heads }) => heads[0])).toEqual(heads.map(({ id }) => id))
      }
    }
  })

  test('says every picture in words, in its language', () => {
    const wanted = paper.blocks.flatMap((block) => (block.kind === 'picture' ? [block.alt] : []))
    expect(wanted.length).toBeGreaterThan(0)
    const figures = found(/^Figure$/)
    expect(figures.map(({ alt }) => alt)).toEqual(wanted)
    for (const { alt } of figures) expect(alt).toMatch(drawn)
  })
})
