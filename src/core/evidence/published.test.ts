import { describe, expect, it } from 'vitest'
import { answeredQuestions, type PublishedQuestion, publishedFor, publishedPerUnit } from './published.ts'
import { type Overlap, type Series, type Study, study } from './study.ts'

const seen = { where: 'an invented page', known: 'read', strength: 'study', checked: '2026-11-25' } as const
const row = { outcome: 'horner_any', events: 3, total: 10, basis: 'stated', confidence: 'high' } as const
const cats = { species: 'cat', procedure: 'teca-lbo', unit: 'ear' } as const
const question: PublishedQuestion = { ...cats, outcome: 'horner_any' }

function invented(id: string, series: Series, overlaps: Overlap[] = [], year = 2020): Study {
  return study({ id, year, design: 'unknown', overlaps, seen, series: [series] })
}
const overlapping = (other: string): Overlap[] => [{ study: other, likelihood: 'possible', because: 'same hospital' }]
const small = invented('small-2001', { ...cats, outcomes: [row] })
const large = invented('large-2002', { ...cats, outcomes: [{ ...row, events: 40, total: 100 }] })

function studiesIn(published: ReturnType<typeof publishedFor>): string[] {
  return published.kind === 'unknown' ? [] : [published.found].flat().map((found) => found.row.study)
}

describe('publishedFor', () => {
  it('is unknown when there is no study at all', () => {
    expect(publishedFor(question, [])).toEqual({ kind: 'unknown', question, aside: [] })
  })

  it('shows one study as one study, with exact and Wilson interval', () => {
    const published = publishedFor(question, [small])
    if (published.kind !== 'one-study') throw new Error(published.kind)
    expect(published.found).toMatchObject({ count: { events: 3, total: 10 }, share: 0.3 })
    expect(published.found.exact.low).toBeCloseTo(0.0667, 4)
    expect(published.found.exact.high).toBeCloseTo(0.6525, 4)
    expect(published.found.wilson.low).toBeCloseTo(0.1078, 4)
    expect(published.found.wilson.high).toBeCloseTo(0.6032, 4)
  })

  it('lists several studies with the span of what they saw, and merges nothing', () => {
    const published = publishedFor(question, [small, large])
    expect(published).toMatchObject({ kind: 'several-studies', span: { low: 0.3, high: 0.4 } })
    expect(studiesIn(published)).toEqual(['small-2001', 'large-2002'])
    expect(published).not.toHaveProperty('pooled')
  })

  it.each([
    ['another species', { species: 'dog' }],
    ['another procedure', { procedure: 'ventral-bulla-osteotomy' }],
    ['another unit', { unit: 'animal' }],
    ['another outcome', { outcome: 'horner_permanent' }],
  ] as const)('never mixes in %s', (_, other) => {
    expect(publishedFor({ ...question, ...other }, [small, large]).kind).toBe('unknown')
  })

  it('names a count in another unit aside', () => {
    const published = publishedFor({ ...question, unit: 'animal' }, [small])
    expect(published.aside).toMatchObject([{ row: { study: 'small-2001' }, because: 'other-unit' }])
  })

  it('shows rows for a sensitivity run, mixed species and remembered ones aside, each with its reason', () => {
    const aside = [
      invented('a-2001', { ...cats, pool: { use: 'sensitivity', because: 'second-hand' }, outcomes: [row] }),
      invented('b-2002', { ...cats, species: 'mixed', pool: { use: 'no', because: 'mixed-species' }, outcomes: [row] }),
      invented('c-2003', { ...cats, pool: { use: 'no', because: 'remembered' }, outcomes: [row] }),
    ]
    const published = publishedFor(question, [...aside, large])
    expect(studiesIn(published)).toEqual(['large-2002'])
    expect(published.aside.map(({ because }) => because)).toEqual(['second-hand', 'mixed-species', 'remembered'])
    expect(publishedFor(question, aside).kind).toBe('unknown')
  })

  it('shows a neighbouring operation aside when the study says that it touches this one', () => {
    const both = invented('d-2004', {
      ...cats,
      procedure: 'cholesteatoma-surgery',
      touches: ['teca-lbo'],
      outcomes: [row],
    })
    expect(publishedFor(question, [both])).toMatchObject({ kind: 'unknown', aside: [{ because: 'other-procedure' }] })
  })
})

describe('studies that may hold the same animals', () => {
  const twin = invented(
    'twin-2003',
    { ...cats, outcomes: [{ ...row, events: 10, total: 60 }] },
    overlapping('large-2002'),
  )

  it('are never both counted: the larger stands, the other is aside', () => {
    const published = publishedFor(question, [twin, large])
    expect(studiesIn(published)).toEqual(['large-2002'])
    expect(published.aside).toMatchObject([{ row: { study: 'twin-2003' }, because: 'overlap' }])
  })

  it('are recognised whichever of the two states it, in any order', () => {
    expect(studiesIn(publishedFor(question, [large, small, twin]))).toEqual(['large-2002', 'small-2001'])
    expect(studiesIn(publishedFor(question, [twin, small, large]))).toEqual(['small-2001', 'large-2002'])
  })

  it('of one size leave the newer one', () => {
    const older = invented('older-1990', { ...cats, outcomes: [row] }, [], 1990)
    const newer = invented('newer-2010', { ...cats, outcomes: [row] }, overlapping('older-1990'), 2010)
    expect(studiesIn(publishedFor(question, [older, newer]))).toEqual(['newer-2010'])
  })

  it('do not stand in each other’s way when they share no outcome', () => {
    const elsewhere = invented(
      'elsewhere-2005',
      { ...cats, outcomes: [{ ...row, outcome: 'wound_any' }] },
      overlapping('large-2002'),
    )
    expect(publishedFor(question, [large, elsewhere]).kind).toBe('one-study')
    expect(publishedFor({ ...question, outcome: 'wound_any' }, [large, elsewhere]).kind).toBe('one-study')
  })
})

describe('a sentence that can be read in two ways', () => {
  const pool = { use: 'no', because: 'two-readings' } as const
  const readings = invented('r-2006', {
    ...cats,
    pool,
    outcomes: [
      { ...row, reading: 'A', events: 14, total: 50 },
      { ...row, reading: 'B', events: 8, total: 52 },
    ],
  })

  it('gives the span of both intervals, not one number', () => {
    const published = publishedFor(question, [readings])
    if (published.kind !== 'two-readings') throw new Error(published.kind)
    expect(published.found.map(({ count }) => count.events)).toEqual([14, 8])
    expect(published.span.low).toBe(published.found[1]?.exact.low)
    expect(published.span.high).toBe(published.found[0]?.exact.high)
  })

  it('steps aside for a study that can be counted', () => {
    const published = publishedFor(question, [readings, large])
    expect(published.kind).toBe('one-study')
    expect(published.aside.map(({ because }) => because)).toEqual(['two-readings', 'two-readings'])
  })
})

describe('answeredQuestions', () => {
  it('lists what some study counted, once each', () => {
    expect(answeredQuestions('cat', 'teca-lbo', [small, large])).toEqual([question])
    expect(answeredQuestions('dog', 'teca-lbo', [small, large])).toEqual([])
  })
})

describe('publishedPerUnit', () => {
  const { unit: _, ...asked } = question
  const perAnimal = invented('animals-2007', { ...cats, unit: 'animal', outcomes: [row] })

  it('stands every counted unit side by side', () => {
    const published = publishedPerUnit(asked, [small, large, perAnimal])
    expect(published.map((one) => [one.question.unit, one.kind])).toEqual([
      ['animal', 'one-study'],
      ['ear', 'several-studies'],
    ])
  })

  it('is one unknown when no unit was counted', () => {
    expect(publishedPerUnit({ ...asked, outcome: 'hypoglossal' }, [small])).toMatchObject([{ kind: 'unknown' }])
  })
})
