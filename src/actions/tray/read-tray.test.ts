import { describe, expect, it } from 'vitest'
import { sealAll } from '#core/journal/chain.ts'
import { entryMaker, testId } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { trayOf } from '#core/tray/tray.ts'
import { project } from '../journal/project.ts'
import { trayEntries } from './read-tray.ts'

const clinic = { kind: 'clinic' } as const

/** Three papers of which the first was filed; sixty more that came and were filed. */
function tray() {
  const make = entryMaker({ stream: 'tray' })
  const file = (withdraws: string) =>
    make({
      kind: 'refile',
      subject: clinic,
      body: { toStream: 'case:0001', toSubject: { kind: 'animal', animal: 'animal-1' }, copy: testId(7, 9) },
      withdraws,
      reason: 'Filed.',
    })
  const older = Array.from({ length: 60 }, () => make({ kind: 'arrived-paper' }))
  const filings = older.map(({ id }) => file(id))
  const papers = [make({ kind: 'arrived-paper' }), make({ kind: 'arrived-paper' }), make({ kind: 'arrived-paper' })]
  const corrected = make({ kind: 'arrived-paper', supersedes: [papers[2]?.id ?? ''], reason: 'Another sender.' })
  const filing = file(papers[0]?.id ?? '')
  return { papers, corrected, filing, all: [...older, ...filings, ...papers, corrected, filing] }
}

describe('the holding tray as it is sent', () => {
  it('is whatever waits and what was filed last, and folds to the same tray', () => {
    const { papers, corrected, filing, all } = tray()
    const entries = trayEntries(sealAll(all, () => '2026-03-01T08:00:00.000Z'))
    const { waiting, filed } = trayOf(fold(entries))
    expect(waiting.map(({ header }) => header.id)).toEqual([papers[1]?.id, corrected.id])
    expect(filed[0]?.refile.header.id).toBe(filing.id)
    expect(filed).toHaveLength(50)
    expect(entries).toHaveLength(2 + 2 * 50)
  })
})

describe('what waits in the tray', () => {
  it('is owed by the front desk within a day of coming in, and no longer once it was filed', () => {
    const { papers, all } = tray()
    const { owed, row } = project({
      clinic: 'clinic-1',
      stream: 'tray',
      entries: sealAll(all, () => '2026-03-01T08:00:00.000Z'),
      clinicEntries: [],
      linked: [],
      everywhere: [],
      keptAside: [],
      rows: [],
    })
    expect(row).toBeNull()
    expect(owed.map(({ what, who }) => [what, who])).toEqual([
      ['File what came in: laboratory report from Northfold Laboratory', 'desk'],
      ['File what came in: laboratory report from Northfold Laboratory', 'desk'],
    ])
    const came = papers[1]?.happenedAt.at ?? ''
    expect(owed[0]).toMatchObject({ id: `arrived-paper:${papers[1]?.id}`, dueFrom: came })
    expect(Date.parse(owed[0]?.dueBy ?? '') - Date.parse(came)).toBe(86_400_000)
  })
})
