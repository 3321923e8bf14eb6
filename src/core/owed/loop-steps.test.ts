import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { emptyReport } from '#core/culture/empty-report.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { identity as identityKind } from '#core/journal/kinds/identity.ts'
import { fileOf } from './files-for-tests.ts'
import { waysOf } from './loop-steps.ts'
import { owedOf } from './owed.ts'
import { specimenLoopsOf } from './specimen-loop.ts'

const make = entryMaker()
const identity = make({ kind: 'identity', body: { ...identityKind.example, referringVet: 'contact-vet-1' } })
const specimen = make({ kind: 'specimen', at: '2026-03-04T10:00:00.000Z' })
const home = make({ kind: 'discharge', at: '2026-03-05T10:00:00.000Z' })
const report = (status: 'preliminary' | 'final') =>
  make({
    kind: 'specimen-result',
    at: '2026-03-08T10:00:00.000Z',
    body: { ...emptyReport, specimen: specimen.id, status, growth: 'growth' },
  })
const final = report('final')
const reading = (decision: 'no-change' | 'change' | 'decide-later', at = '2026-03-08T11:00:00.000Z') =>
  make({ kind: 'result-read', at, body: { result: final.id, decision, edition: null, text: 'Read.' } })
const told = (about: string, who: 'owner' | 'referring-vet') =>
  make({
    kind: 'told',
    at: '2026-03-08T12:00:00.000Z',
    body: { about, who, contact: 'contact-1', by: 'phone', text: null },
  })

function strips(...entries: Entry[]): string[] {
  const file = fileOf([identity, specimen, home, ...entries])
  const { owed } = owedOf(file, procedures, { rules: owedRules })
  return specimenLoopsOf(file.theCase).flatMap((loop) =>
    waysOf(loop, owed, file.theCase).map(({ steps }) => steps.map(({ step, state }) => `${step} ${state}`).join(', ')),
  )
}

describe('the strip from the swab to "owner told"', () => {
  it('waits for the report, then for each step in its turn', () => {
    expect(strips()).toEqual(['taken done, come owed, read behind, owner-told behind'])
    expect(strips(final)).toEqual(['taken done, come done, read owed, owner-told behind'])
    const read = reading('no-change')
    expect(strips(final, read)).toEqual(['taken done, come done, read done, owner-told owed, vet-told owed'])
    expect(strips(final, read, told(final.id, 'owner'), told(final.id, 'referring-vet'))).toEqual([
      'taken done, come done, read done, owner-told done, vet-told done',
    ])
  })

  it('keeps a preliminary report beside what is still expected', () => {
    expect(strips(report('preliminary'))).toEqual([
      'taken done, come done, read owed',
      'taken done, come owed, read behind, owner-told behind',
    ])
  })

  it('shows a decision that waits, and the change that a decision asks for', () => {
    const later = reading('decide-later')
    expect(strips(final, later)).toEqual(['taken done, come done, read done, decided owed, owner-told behind'])
    const decided = reading('change', '2026-03-08T14:00:00.000Z')
    expect(strips(final, later, decided)[0]).toContain('decided done, changed owed, owner-told owed')
  })

  it('is told only when the owner has heard of the change as well', () => {
    const read = reading('change')
    const change = make({
      kind: 'medicine-change',
      at: '2026-03-08T11:30:00.000Z',
      body: { read: read.id, because: 'Resistant.', stops: [], starts: [] },
    })
    expect(strips(final, read, change, told(final.id, 'owner'))[0]).toContain('changed done, owner-told owed')
    expect(strips(final, read, change, told(change.id, 'owner'))[0]).toContain('changed done, owner-told done')
  })
})
