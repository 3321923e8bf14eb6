import { describe, expect, it } from 'vitest'
import type { Category, DrugReading, UsedBreakpoint } from './reading.ts'
import { standingOf } from './standing.ts'

const editions = [
  { id: 'invented-animals', convention: 'CLSI' },
  { id: 'invented-people', convention: 'EUCAST' },
] as const

const row = (edition: string, dose: string | null = null): UsedBreakpoint => ({
  edition,
  standard: 'an invented standard',
  row: 'row-1',
  step: 'same-organism',
  host: 'dog',
  site: 'soft-tissue',
  organisms: 'staphylococcus',
  susceptible: '0.5',
  between: null,
  resistant: '4',
  dose,
})

function read(category: Category, rest: Partial<DrugReading> = {}): DrugReading {
  return {
    agent: 'exampline',
    printed: 'Exampline',
    raw: '0.5 mg/L',
    method: 'MIC',
    category,
    before: null,
    changedBy: null,
    possible: [],
    breakpoint: row('invented-animals'),
    fallback: null,
    laboratory: null,
    flags: [],
    ...rest,
  }
}

const said = (reading: DrugReading | undefined) => {
  const { standing, because } = standingOf(reading, editions)
  return `${standing}: ${because}`
}

describe('how a drug stands against one isolate', () => {
  it('works where it is susceptible, also by inference, and says which', () => {
    expect(said(read('S'))).toBe('works: susceptible')
    expect(said(read('S', { changedBy: 'inferred' }))).toBe('works: inferred-susceptible')
  })

  it('doubts an S that the laboratory calls R', () => {
    expect(said(read('S', { laboratory: 'R' }))).toBe('doubt: laboratory-says-resistant')
    expect(said(read('S', { laboratory: 'S' }))).toBe('works: susceptible')
  })

  it('works at the dose of the standard only where the standard names one', () => {
    expect(said(read('SDD', { breakpoint: row('invented-animals', '10 mg/kg') }))).toBe(
      'works-at-dose: susceptible-at-dose',
    )
    expect(said(read('SDD'))).toBe('doubt: dose-not-known')
  })

  it('keeps the I of two standards apart', () => {
    expect(said(read('I'))).toBe('fails: intermediate')
    expect(said(read('I', { breakpoint: row('invented-people') }))).toBe('doubt: increased-exposure')
  })

  it('names the rule that made it R', () => {
    expect(said(read('R'))).toBe('fails: resistant')
    expect(said(read('R', { changedBy: 'methicillin-resistance', before: 'S' }))).toBe(
      'fails: resistant-methicillin-resistance',
    )
    expect(said(read('R', { changedBy: 'intrinsic' }))).toBe('fails: resistant-intrinsic')
  })

  it('reads a censored value by everything it may be', () => {
    expect(said(read('NI', { possible: ['I', 'R'] }))).toBe('fails: not-susceptible')
    expect(said(read('NI', { possible: ['S', 'SDD'] }))).toBe('doubt: susceptible-at-some-dose')
    expect(said(read('NI', { possible: ['S', 'SDD', 'R'] }))).toBe('doubt: not-interpretable')
    expect(said(read('NI'))).toBe('doubt: not-interpretable')
  })

  it('never makes a yes of a human row or of a word of the laboratory', () => {
    const fallback = { category: 'S' as const, breakpoint: row('invented-people') }
    expect(said(read('no_breakpoint', { fallback }))).toBe('doubt: fallback-susceptible')
    expect(said(read('no_breakpoint', { fallback: { ...fallback, category: 'R' } }))).toBe(
      'doubt: fallback-not-susceptible',
    )
    expect(said(read('no_breakpoint', { laboratory: 'S' }))).toBe('doubt: laboratory-susceptible')
    expect(said(read('no_breakpoint', { laboratory: 'I' }))).toBe('doubt: laboratory-intermediate')
  })

  it('takes the R of the laboratory at its word, whatever a human row says', () => {
    const fallback = { category: 'S' as const, breakpoint: row('invented-people') }
    expect(said(read('no_breakpoint', { laboratory: 'R*', fallback }))).toBe('fails: laboratory-resistant')
  })

  it('hears what the laboratory says in a word as it hears its letter', () => {
    expect(said(read('S', { laboratory: 'Resistant' }))).toBe('doubt: laboratory-says-resistant')
    expect(said(read('no_breakpoint', { laboratory: 'resistant' }))).toBe('fails: laboratory-resistant')
    expect(said(read('no_breakpoint', { laboratory: 'Susceptible' }))).toBe('doubt: laboratory-susceptible')
  })

  it('takes a category without a number as the word of the laboratory, not as ours', () => {
    const word = (category: 'S' | 'I' | 'R') =>
      said(read(category, { laboratory: category, breakpoint: null, flags: ['laboratory-category-only'] }))
    expect([word('S'), word('I'), word('R')]).toEqual([
      'doubt: laboratory-susceptible',
      'doubt: laboratory-intermediate',
      'fails: laboratory-resistant',
    ])
    const changed = { laboratory: 'S', changedBy: 'intrinsic' as const, flags: ['laboratory-category-only'] }
    expect(said(read('R', changed))).toBe('fails: resistant-intrinsic')
  })

  it('keeps back what the isolate itself speaks against', () => {
    expect(said(read('S', { flags: ['d-test-missing'] }))).toBe('doubt: d-test-missing')
    expect(said(read('S', { flags: ['esbl-suspected'] }))).toBe('doubt: esbl-suspected')
    expect(said(read('S', { flags: ['same-drug-differs'] }))).toBe('doubt: same-drug-differs')
    expect(said(read('R', { flags: ['d-test-missing'] }))).toBe('fails: resistant')
    expect(said(read('NI', { flags: ['not-to-be-reported-susceptible'] }))).toBe(
      'fails: susceptible-not-to-be-reported',
    )
    expect(said(read('NI', { flags: ['value-unreadable'] }))).toBe('doubt: value-unread')
  })

  it('doubts what was not tested and what has no breakpoint', () => {
    expect(said(undefined)).toBe('doubt: not-tested')
    expect(said(read('no_breakpoint'))).toBe('doubt: no-breakpoint')
  })
})
