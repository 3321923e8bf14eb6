import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { ageOf, filingOf, trayOf } from './tray.ts'

const clinic = { kind: 'clinic' } as const
const reason = 'Filed.'

function arrivedPapers() {
  const make = entryMaker({ stream: 'tray' })
  const [letter, culture] = [make({ kind: 'arrived-paper' }), make({ kind: 'arrived-paper' })]
  const copy = '0190a7c2-0000-7000-8000-0000000000ff'
  const body = { toStream: 'case:0001', toSubject: { kind: 'animal', animal: 'animal-1' } as const, copy }
  const filing = make({ kind: 'refile', subject: clinic, body, withdraws: letter.id, reason })
  return { make, letter, culture, filing }
}

describe('the holding tray', () => {
  it('holds what came in until it is filed, and remembers where to', () => {
    const { letter, culture, filing } = arrivedPapers()
    expect(trayOf(fold([letter, culture])).waiting.map(({ header }) => header.id)).toEqual([letter.id, culture.id])
    const { waiting, filed } = trayOf(fold([letter, culture, filing]))
    expect(waiting.map(({ header }) => header.id)).toEqual([culture.id])
    expect(filed.map(({ arrived, refile }) => [arrived.header.id, refile.body.toStream])).toEqual([
      [letter.id, 'case:0001'],
    ])
  })

  it('holds a paper again whose filing was taken back', () => {
    const { make, letter, filing } = arrivedPapers()
    const back = make({ kind: 'withdrawal', subject: clinic, withdraws: filing.id, reason: 'Another Tansy.' })
    expect(filingOf(fold([letter, filing]), letter.id)?.refile.header.id).toBe(filing.id)
    expect(filingOf(fold([letter, filing, back]), letter.id)).toBeUndefined()
    const { waiting, filed } = trayOf(fold([letter, filing, back]))
    expect(waiting.map(({ header }) => header.id)).toEqual([letter.id])
    expect(filed).toEqual([])
  })

  it('shows nowhere what was thrown away, and keeps it in the history', () => {
    const { make, letter } = arrivedPapers()
    const away = make({ kind: 'withdrawal', subject: clinic, withdraws: letter.id, reason: 'Advertising.' })
    const folded = fold([letter, away])
    expect(trayOf(folded)).toEqual({ waiting: [], filed: [] })
    expect(folded.line(letter.id)?.state).toBe('withdrawn')
  })

  it('ages by the hour, and never below nothing', () => {
    expect(ageOf('2026-03-01T08:00:00.000Z', '2026-03-02T11:59:00.000Z')).toEqual({ days: 1, hours: 3 })
    expect(ageOf('2026-03-01T08:00:00.000Z', '2026-03-01T07:00:00.000Z')).toEqual({ days: 0, hours: 0 })
  })
})
