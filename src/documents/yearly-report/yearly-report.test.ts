import { describe, expect, it } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { watching } from '#content/evidence/watching.ts'
import { yearlyMethod } from '#content/evidence/yearly-method.ts'
import { columnsOfYear } from '#content/wording/columns-of-year.ts'
import { hashText } from '#core/journal/canonical.ts'
import { earForTests } from '#core/results/ears-for-tests.ts'
import { freezeYear } from '#core/yearly/freeze-year.ts'
import { frozenText, readFrozen } from '#core/yearly/frozen-year.ts'
import { frozenByMethod1 as old } from '#core/yearly/method-1-for-tests.ts'
import { reportOf, reportText } from '#core/yearly/report-of.ts'
import { dictionaryOf } from '../render/data-dictionary.ts'
import { renderText } from '../render/text.ts'
import { columnsOfReport, sheetOfYear } from './sheet-of-year.ts'
import { yearlyReport } from './yearly-report.ts'

const frozenBy = {
  program: '0.1.0',
  clinic: 'Invented clinic',
  by: 'Runa Falk',
  decided: [],
  zone: 'Europe/London',
}

/** Twenty ears operated for a tumour, one of them with a tract; two for chronic otitis; one of which nobody said it. */
function madeByMethod2() {
  const known = { deep_recurrence: false, resolution_or_improved: true }
  const of = (number: number, more: Parameters<typeof earForTests>[1]) =>
    earForTests(number, { followedUntil: '2026-03-01', ...more, known: { ...known, ...more?.known } })
  const ears = [
    ...Array.from({ length: 20 }, (_, i) => of(i, { reason: 'tumour', known: { deep_recurrence: i === 0 } })),
    ...[30, 31].map((number) => of(number, { reason: 'chronic-otitis' })),
    of(40, {}),
  ]
  const made = freezeYear(ears, {
    year: 2025,
    lookedAt: '2026-11-30',
    method: yearlyMethod,
    rules: ownCounting,
    watching,
    watched: () => [],
    salt: 'sixteen letters and more',
  })
  if (made.kind === 'refusal') throw new Error(made.refusal.because)
  const { hash } = frozenText(made.answer)
  const report = reportOf(made.answer, hash)
  return { report, reportHash: reportText(report).hash }
}

describe('a year that was frozen by method 1', () => {
  const read = readFrozen(old.text, old.hash)
  if (read.kind === 'refusal') throw new Error(read.refusal.because)
  const report = reportOf(read.answer, old.hash)
  const { lookedAt, method, year } = report

  it('comes out as it did then, to the byte, though its rows keep no reason: JSON, counts, what the columns mean', () => {
    expect(reportText(report).hash).toBe(old.report)
    expect(hashText(sheetOfYear(report))).toBe(old.csv)
    expect(hashText(dictionaryOf(columnsOfReport(report)))).toBe(old.columns)
    expect(columnsOfReport(report)).toBe(columnsOfYear)
    expect(report.operations.every(({ byReason }) => byReason === undefined)).toBe(true)
  })

  it('has the paper that it had: where words around the numbers are changed on purpose, this hash changes with them', () => {
    const hashes = { dataHash: old.hash, reportHash: old.report }
    const body = { ...frozenBy, ...hashes, year, lookedAt, method, rows: 22, at: '2025-11-30T10:00:00.000Z' }
    // In the order of then: what is hashed is the text of it.
    const ordered = {
      year: body.year,
      lookedAt: body.lookedAt,
      rows: body.rows,
      dataHash: body.dataHash,
      reportHash: body.reportHash,
      method: body.method,
      program: body.program,
      clinic: body.clinic,
      by: body.by,
      decided: body.decided,
      at: body.at,
      zone: body.zone,
    }
    expect(hashText(JSON.stringify(yearlyReport(report, ordered)))).toBe(old.paper)
  })
})

describe('a year that is frozen by method 2', () => {
  const { report, reportHash } = madeByMethod2()
  const { year, lookedAt, method, dataHash } = report
  const paper = yearlyReport(report, {
    ...frozenBy,
    year,
    lookedAt,
    method,
    dataHash,
    reportHash,
    rows: 23,
    at: '2026-11-30T10:00:00.000Z',
  })
  const text = renderText(paper).replaceAll(/\s+/g, ' ')

  it('counts the ears by main reason, each with the same minimum; those of which nobody said it are a group of their own', () => {
    const reasons = report.operations[0]?.byReason ?? []
    expect(reasons.map(({ reason, ears }) => [reason, ears])).toEqual([
      ['chronic-otitis', 2],
      ['tumour', 20],
      ['not-recorded', 1],
    ])
    const late = (place: number) => reasons[place]?.rates.find(({ outcome }) => outcome === 'deep_recurrence')
    expect(late(1)).toMatchObject({ unit: 'ear', events: 1, total: 20, said: 'shown', share: 0.05 })
    expect(late(0)).toMatchObject({ events: 0, total: 2, said: 'none-yet', share: null })
  })

  it('says it on paper: how much is known, the counts, and that nobody drew the groups by lot', () => {
    expect(text).toContain('By main reason of the operation, by ears')
    expect(text).toContain('Nobody drew these groups by lot')
    expect(text).toContain('Tumour: 20')
    expect(text).toContain('Operated a year or longer ago: 20. Known how it ended: 20; not known: 0.')
    expect(text).toContain(
      'Late swelling, abscess or draining tract: 1 of 20 known had it: 5 of 100, between 0 and 25.',
    )
    expect(text).toContain('Not recorded: 1')
    expect(text).toContain('Method, version 2.')
  })

  it('has them in the CSV, with a column that says which reason, or all', () => {
    const [head = '', ...rows] = sheetOfYear(report).trim().split('\r\n')
    expect(head.split(',').slice(4, 7)).toEqual(['unit', 'reason', 'outcome'])
    // Thirteen outcomes in three units, and by ears for each of three reasons.
    expect(rows).toHaveLength(39 + 39)
    expect(rows.filter((row) => row.includes(',ear,tumour,deep_recurrence,1,20,'))).toHaveLength(1)
    expect(rows.filter((row) => row.includes(',all,'))).toHaveLength(39)
  })
})
