import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { secondCheck } from '#core/journal/kinds/second-check.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import { sayOwed } from './owed-wording.ts'

const make = entryMaker()
const person = (name: string) => ({ kind: 'person', person: name }) as const
const declared = make({ kind: 'emergency-declared', at: '2026-03-04T10:00:00.000Z', author: person('person-surgeon') })
const check = (by: string, at: string, change: Partial<typeof secondCheck.example> = {}): Entry =>
  make({
    kind: 'second-check',
    at,
    author: person(by),
    body: { of: [declared.id], verdict: 'agrees', text: null, plan: null, ...change } as never,
  })

function second(...entries: readonly Entry[]) {
  const { owed, closed } = owedOf(fileOf([declared, ...entries]), procedures, { rules: owedRules })
  const open = owed.filter(({ what }) => what === 'second-name-for-emergency')
  return {
    open,
    ended: closed.filter(({ item }) => item.what === 'second-name-for-emergency').map((one) => one.because),
  }
}

describe('a second name for a declared emergency', () => {
  it('is owed from the moment it is declared, for 24 hours, and says who and why', () => {
    const [item] = second().open
    expect(item).toMatchObject({ dueFrom: '2026-03-04T10:00:00.000Z', dueBy: '2026-03-05T10:00:00.000Z' })
    expect(item && sayOwed(item, owedInEnglish)).toMatchObject({
      what: 'A second name for the declared emergency',
      why: expect.stringContaining('person-surgeon declared an emergency: The artery is open'),
    })
  })

  it('is settled by the name of another person, also one that does not agree', () => {
    const after = '2026-03-04T18:00:00.000Z'
    for (const verdict of ['agrees', 'disagrees'] as const)
      expect(second(check('person-nurse', after, { verdict } as never))).toEqual({ open: [], ended: ['settled'] })
  })

  it('is settled late after its limit', () => {
    expect(second(check('person-nurse', '2026-03-05T10:01:00.000Z')).ended).toEqual(['settled-late'])
  })

  it('is not settled by whoever declared it, by nobody, or by a name under something else', () => {
    const after = '2026-03-04T18:00:00.000Z'
    expect(second(check('person-surgeon', after)).open.length).toBe(1)
    expect(second(check('person-nurse', after, { verdict: 'nobody-available' } as never)).open.length).toBe(1)
    expect(
      second(check('person-nurse', after, { of: ['0190a7c2-0000-7000-8000-0000000000ff'] } as never)).open.length,
    ).toBe(1)
  })

  it('stays settled, and due when it was, after the words were corrected', () => {
    const corrected = make({
      kind: 'emergency-declared',
      at: '2026-03-04T12:00:00.000Z',
      author: person('person-surgeon'),
      supersedes: [declared.id],
      reason: 'The other artery.',
    })
    expect(second(corrected).open[0]?.dueBy).toBe('2026-03-05T10:00:00.000Z')
    expect(second(check('person-nurse', '2026-03-04T11:00:00.000Z'), corrected).ended).toEqual(['settled'])
  })
})
