import { describe, expect, it } from 'vitest'
import { emptyReport, printedIsolate } from '#core/culture/empty-report.ts'
import { sealAll } from '#core/journal/chain.ts'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { operationSummary } from '#core/journal/kinds/operation-summary.ts'
import { specimen as specimenKind } from '#core/journal/kinds/specimen.ts'
import { grownInJournal } from './grown-in-journal.ts'

type Site = BodyOf<'specimen'>['site']

/** A sample and its final report of one isolate, in the order in which they came. */
function grew(make: MakeEntry, at: string, organism: string, more: Partial<Sampled> = {}): Entry[] {
  const { site = 'canal', status = 'final', operation = null } = more
  const body = { ...specimenKind.example, site, operation, label: `${organism} ${at}` } as BodyOf<'specimen'>
  const specimen = make({ kind: 'specimen', at, body })
  const isolates = [printedIsolate('1', organism, [['cefalexin', '<=2 mg/L']])]
  const report = { ...emptyReport, specimen: specimen.id, status, growth: 'growth', isolates } as const
  return [specimen, make({ kind: 'specimen-result', at, body: report })]
}
type Sampled = {
  readonly site: Site
  readonly status: 'preliminary' | 'final' | 'corrected'
  readonly operation: string | null
}

const recorded = (entries: readonly Entry[]) =>
  grownInJournal(
    sealAll(entries, () => '2026-06-01T08:00:00.000Z'),
    { zone: 'Europe/London', organismOf: ({ organism }) => organism },
  )
const said = (entries: readonly Entry[]) =>
  recorded(entries).isolates.map(({ animal, day, site, organism }) => [animal, day, site, organism].join(', '))

describe('what grew, from the record', () => {
  it('is each isolate of each final report, with the day and place of its sample and what was tested', () => {
    const make = entryMaker()
    const entries = [make({ kind: 'identity' }), ...grew(make, '2026-03-02T23:30:00.000Z', 'Proteus mirabilis')]
    expect(said(entries)).toEqual(['animal-1, 2026-03-02, canal, Proteus mirabilis'])
    const [isolate] = recorded(entries).isolates
    expect(isolate).toMatchObject({ host: 'dog', tested: [{ drug: 'cefalexin', raw: '<=2 mg/L' }] })
    // The day is that of the clinic: half past eleven in summer is the next day there.
    const summer = entryMaker()
    const late = [summer({ kind: 'identity' }), ...grew(summer, '2026-07-02T23:30:00.000Z', 'Proteus mirabilis')]
    expect(said(late)).toEqual(['animal-1, 2026-07-03, canal, Proteus mirabilis'])
  })

  it('counts no preliminary report, and none of an animal whose species nobody wrote, but says how many', () => {
    const make = entryMaker()
    const preliminary = grew(make, '2026-03-02T10:00:00.000Z', 'Proteus mirabilis', { status: 'preliminary' })
    expect(recorded([make({ kind: 'identity' }), ...preliminary])).toMatchObject({ isolates: [], preliminary: 1 })
    const nobody = grew(make, '2026-03-02T10:00:00.000Z', 'Proteus mirabilis')
    expect(recorded(nobody)).toMatchObject({ isolates: [], withoutSpecies: 1 })
  })

  it('takes a corrected report for the one it supersedes, and none that was withdrawn', () => {
    const make = entryMaker()
    const [specimen, first] = grew(make, '2026-03-02T10:00:00.000Z', 'Proteus mirabilis')
    if (!specimen || !first) throw new Error('Nothing was taken.')
    const isolates = [printedIsolate('1', 'Proteus vulgaris', [])]
    const report = { ...emptyReport, specimen: specimen.id, status: 'corrected', growth: 'growth', isolates } as const
    const corrected = make({ kind: 'specimen-result', body: report, supersedes: [first.id], reason: 'Named anew.' })
    const all = [make({ kind: 'identity' }), specimen, first, corrected]
    expect(said(all)).toEqual(['animal-1, 2026-03-02, canal, Proteus vulgaris'])
    const { subject } = corrected
    const taken = make({ kind: 'withdrawal', subject, withdraws: corrected.id, reason: 'Another dog.' })
    expect(said([...all, taken])).not.toContain('animal-1, 2026-03-02, canal, Proteus vulgaris')
  })

  it('finds the sample also when its entry was corrected since', () => {
    const make = entryMaker()
    const [specimen, result] = grew(make, '2026-03-02T10:00:00.000Z', 'Proteus mirabilis')
    if (!specimen || !result) throw new Error('Nothing was taken.')
    const body = { ...specimenKind.example, site: 'bulla-on-entry', operation: null, label: 'B-9' } as const
    const at = '2026-03-02T10:00:00.000Z'
    const moved = make({ kind: 'specimen', at, body, supersedes: [specimen.id], reason: 'It was the bulla.' })
    expect(said([make({ kind: 'identity' }), specimen, result, moved])).toEqual([
      'animal-1, 2026-03-02, bulla-on-entry, Proteus mirabilis',
    ])
  })

  it('sets the samples of a second operation on the same ear apart', () => {
    const make = entryMaker()
    const signed = (operation: string, at: string, side: 'LEFT' | 'RIGHT') =>
      make({
        kind: 'operation-summary',
        subject: { kind: 'operation', animal: 'animal-1', operation },
        body: {
          ...operationSummary.example,
          side,
          incisionAt: { ...operationSummary.example.incisionAt, at } as typeof operationSummary.example.incisionAt,
        } as BodyOf<'operation-summary'>,
      })
    const bulla = { site: 'bulla-on-entry' } as const
    const entries = [
      make({ kind: 'identity' }),
      signed('one', '2025-03-02T09:00:00.000Z', 'LEFT'),
      ...grew(make, '2025-03-02T10:00:00.000Z', 'Proteus mirabilis', { ...bulla, operation: 'one' }),
      signed('other ear', '2025-06-02T09:00:00.000Z', 'RIGHT'),
      signed('two', '2026-03-02T09:00:00.000Z', 'LEFT'),
      ...grew(make, '2026-03-02T10:00:00.000Z', 'Escherichia coli', { ...bulla, operation: 'two' }),
    ]
    expect(said(entries)).toEqual([
      'animal-1, 2025-03-02, bulla-on-entry, Proteus mirabilis',
      'animal-1, 2026-03-02, second-operation, Escherichia coli',
    ])
  })

  it('takes two files that a merge joins for one animal', () => {
    const here = entryMaker()
    const there = entryMaker({ stream: 'case:0042' }, 1)
    const other = { kind: 'animal', animal: 'animal-0042' } as const
    const entries = [
      here({ kind: 'identity', at: '2026-01-01T10:00:00.000Z' }),
      ...grew(here, '2026-03-02T10:00:00.000Z', 'Proteus mirabilis'),
      there({ kind: 'identity', subject: other, at: '2026-02-01T10:00:00.000Z' }),
      ...grew(there, '2026-03-01T10:00:00.000Z', 'Escherichia coli'),
    ]
    const animals = (all: readonly Entry[]) => recorded(all).isolates.map(({ animal }) => animal)
    expect(animals(entries)).toEqual(['animal-0042', 'animal-1'])
    expect(new Set(animals([...entries, here({ kind: 'merge' })])).size).toBe(1)
  })
})
