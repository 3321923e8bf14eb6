import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { emptyReport } from '#core/culture/empty-report.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import { sayOwed } from './owed-wording.ts'

const make = entryMaker()
const specimen = make({ kind: 'specimen', at: '2026-03-04T10:00:00.000Z' })
const wentHome = make({ kind: 'discharge', at: '2026-03-05T16:00:00.000Z' })
const result = make({
  kind: 'specimen-result',
  at: '2026-03-08T10:00:00.000Z',
  body: { ...emptyReport, specimen: specimen.id, status: 'final', growth: 'growth' },
})
const reading = (decision: 'change' | 'no-change') =>
  make({
    kind: 'result-read',
    at: '2026-03-08T12:00:00.000Z',
    body: { result: result.id, decision, edition: null, text: 'Resistant.' },
  })
const read = reading('change')
const change = make({
  kind: 'medicine-change',
  at: '2026-03-08T12:30:00.000Z',
  body: { read: read.id, because: 'Resistant.', stops: [], starts: [] },
})
const told = (about: string, who: 'owner' | 'referring-vet' = 'owner') =>
  make({
    kind: 'told',
    at: '2026-03-08T13:00:00.000Z',
    body: { about, who, contact: 'contact-1', by: 'phone', text: null },
  })

const loop = new Set(['medicine-change-to-write', 'owner-about-medicines', 'owner-to-tell', 'result-to-read'])

function owed(...entries: Entry[]): string[] {
  const all = owedOf(fileOf(entries), procedures, { rules: owedRules })
  for (const one of all.owed) expect(sayOwed(one, owedInEnglish).why).not.toMatch(/[{}]|undefined/)
  return all.owed.map(({ what }) => what).filter((what) => loop.has(what))
}

describe('a decision to change the medicines', () => {
  it('is owed until the change is written, and then the owner is owed it', () => {
    const before = [specimen, wentHome, result, read]
    expect(owed(...before)).toEqual(['medicine-change-to-write', 'owner-to-tell'])
    expect(owed(...before, change)).toEqual(['owner-to-tell', 'owner-about-medicines'])
    expect(owed(...before, change, told(change.id))).toEqual([])
  })

  it('is not told by telling the result alone: the page at the door is still the old one', () => {
    expect(owed(specimen, wentHome, result, read, change, told(result.id))).toEqual(['owner-about-medicines'])
  })

  it('is told with the page of a later change, which holds it too', () => {
    const later = make({
      kind: 'medicine-change',
      at: '2026-03-08T12:45:00.000Z',
      body: { read: read.id, because: 'Vomits.', stops: [], starts: [] },
    })
    const all = [specimen, wentHome, result, read, change, later]
    expect(owed(...all).filter((what) => what === 'owner-about-medicines')).toHaveLength(2)
    expect(owed(...all, told(later.id))).toEqual([])
    expect(owed(...all, told(change.id))).toContain('owner-about-medicines')
  })

  it('is not told to the owner by telling the referring vet', () => {
    const all = owed(specimen, wentHome, result, read, change, told(change.id, 'referring-vet'))
    expect(all).toEqual(['owner-to-tell', 'owner-about-medicines'])
  })

  it('is settled by going home afterwards, with what is then written', () => {
    const later = make({ kind: 'discharge', at: '2026-03-09T16:00:00.000Z' })
    expect(owed(specimen, wentHome, result, read, later)).not.toContain('medicine-change-to-write')
  })

  it('is not settled by a correction of the discharge, which may be about the collar', () => {
    const corrected = make({
      kind: 'discharge',
      at: '2026-03-09T16:00:00.000Z',
      supersedes: [wentHome.id],
      reason: 'Collar.',
    })
    expect(owed(specimen, wentHome, result, read, corrected)).toContain('medicine-change-to-write')
  })

  it('is not owed where nothing changes, nor after a death', () => {
    expect(owed(specimen, wentHome, result, reading('no-change'))).toEqual(['owner-to-tell'])
    const death = make({ kind: 'death', at: '2026-03-08T14:00:00.000Z' })
    expect(owed(specimen, wentHome, result, read, change, death)).toEqual([])
  })
})
