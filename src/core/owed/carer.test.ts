import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { discharge } from '#core/journal/kinds/discharge.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'

const make = entryMaker()

function home(carer: BodyOf<'discharge'>['carer']): Entry {
  return make({ kind: 'discharge', at: '2026-03-02T16:00:00.000Z', body: { ...discharge.example, carer } })
}

function told(about: string, body: Partial<BodyOf<'told'>>, at: string): Entry {
  const whole = { about, who: 'carer', contact: 'contact-sitter', by: 'in-person', text: null, ...body } as const
  return make({ kind: 'told', at, body: whole })
}

function isOwed(...entries: Entry[]): boolean {
  const { owed } = owedOf(fileOf(entries), procedures, { rules: owedRules })
  return owed.some(({ what }) => what === 'carer-to-tell')
}

const waits = home({ contact: 'contact-sitter', page: 'not-yet' })
const change = make({
  kind: 'medicine-change',
  at: '2026-03-05T10:00:00.000Z',
  body: { read: null, because: 'Resistant.', stops: [], starts: [] },
})

describe('the home page for the one who cares for the animal', () => {
  it('is owed when somebody is named who does not have it, and to nobody else', () => {
    expect(isOwed(home(null))).toBe(false)
    expect(isOwed(waits)).toBe(true)
    expect(isOwed(home({ contact: 'contact-sitter', page: 'handed-over' }))).toBe(false)
  })

  it('is settled by telling this person, not by telling the owner or another one', () => {
    const at = '2026-03-03T09:00:00.000Z'
    expect(isOwed(waits, told(waits.id, {}, at))).toBe(false)
    expect(isOwed(waits, told(waits.id, { who: 'owner' }, at))).toBe(true)
    expect(isOwed(waits, told(waits.id, { contact: 'contact-1' }, at))).toBe(true)
  })

  it('is owed again after a change of medicines: the page handed over no longer counts', () => {
    const had = home({ contact: 'contact-sitter', page: 'handed-over' })
    expect(isOwed(had, change)).toBe(true)
    expect(isOwed(had, change, told(had.id, {}, '2026-03-05T12:00:00.000Z'))).toBe(true)
    expect(isOwed(had, change, told(change.id, {}, '2026-03-05T12:00:00.000Z'))).toBe(false)
  })

  it('is owed to nobody after a death', () => {
    expect(isOwed(waits, make({ kind: 'death', at: '2026-03-04T10:00:00.000Z' }))).toBe(false)
  })
})
