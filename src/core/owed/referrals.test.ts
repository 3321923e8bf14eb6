import { describe, expect, it } from 'vitest'
import { owedRisks } from '#content/follow-up/owed-risks.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { call as callKind } from '#core/journal/kinds/call.ts'
import { check as checkKind } from '#core/journal/kinds/check.ts'
import { referral as referralKind } from '#core/journal/kinds/referral.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import { sayOwed } from './owed-wording.ts'
import { sortOwed } from './sort.ts'

/** Tuesday 3 March 2026, 21:09 in London. */
const night = '2026-03-03T21:09:00.000Z'

function calledIn(make: MakeEntry, urgency: BodyOf<'referral'>['urgency'], at = night): Entry {
  return make({ kind: 'referral', at, body: { ...referralKind.example, urgency, because: 'Falls over.' } })
}

function spoke(make: MakeEntry, at: string, reached: BodyOf<'call'>['reached']): Entry {
  return make({ kind: 'call', at, body: { ...callKind.example, about: 'other', reached } })
}

function owed(...entries: readonly Entry[]) {
  return owedOf(fileOf(entries), procedures, { rules: owedRules })
}

const codes = (...entries: readonly Entry[]) => owed(...entries).owed.map(({ what }) => what)

describe('an urgent first call (job notes S1; how soon is a house judgement)', () => {
  const make = entryMaker()

  it('owes a look by the time of its urgency, counted from the call also at night, and says why', () => {
    const today = owed(calledIn(make, 'today')).owed
    expect(today).toMatchObject([
      { what: 'urgent-referral', who: 'surgeon', dueFrom: night, dueBy: '2026-03-04T09:09:00.000Z' },
    ])
    expect(today[0]?.facts).toEqual([owedRules.referral.today])
    expect(today.map((item) => sayOwed(item, owedInEnglish))).toMatchObject([
      { what: 'See this animal today: urgent by its first call', why: expect.stringContaining('Falls over.') },
    ])
    expect(owed(calledIn(make, 'this-week')).owed[0]?.dueBy).toBe('2026-03-10T21:09:00.000Z')
  })

  it('leads the list before anything that is merely late', () => {
    const [urgent] = owed(calledIn(make, 'this-week')).owed
    const late = { id: 'result-to-read:r', who: 'surgeon', dueFrom: '2026-02-01', dueBy: '2026-02-02' }
    if (!urgent) throw new Error('Nothing is owed after an urgent call.')
    expect(sortOwed([late, urgent], '2026-03-04T08:00:00.000Z', owedRisks)[0]?.id).toBe(urgent.id)
  })

  it('is not settled by a call, a note, a weight, an owner’s picture or a look before it', () => {
    const nothing = [
      spoke(make, '2026-03-03T21:30:00.000Z', 'yes'),
      make({ kind: 'note', at: '2026-03-03T21:31:00.000Z' }),
      make({ kind: 'weight', at: '2026-03-03T21:32:00.000Z' }),
      make({
        kind: 'check',
        at: '2026-03-03T21:33:00.000Z',
        body: { ...checkKind.example, seenBy: 'owner-photograph' },
      }),
      make({ kind: 'ear-findings', at: '2026-03-03T10:00:00.000Z' }),
    ]
    expect(codes(calledIn(make, 'today'), ...nothing)).toEqual(['urgent-referral'])
    const said = owed(calledIn(make, 'today'), ...nothing).owed[0]?.why.map(({ code }) => code)
    expect(said).toContain('spoken-not-seen')
  })

  it.each(['ear-findings', 'baseline', 'check'] as const)('is settled by the first look at the animal: %s', (kind) => {
    const referral = calledIn(make, 'today')
    const look = make({ kind, at: '2026-03-03T22:40:00.000Z' })
    expect(owed(referral, look).closed).toMatchObject([{ because: 'settled', by: look.id }])
    const late = make({ kind, at: '2026-03-04T09:10:00.000Z' })
    expect(owed(referral, late).closed).toMatchObject([{ because: 'settled-late', by: late.id }])
  })

  it('stays owed beside a second call that made less of it, and follows its own correction', () => {
    const referral = calledIn(make, 'today')
    const again = calledIn(make, 'routine', '2026-03-03T22:00:00.000Z')
    expect(codes(referral, again)).toContain('urgent-referral')
    const corrected = make({
      kind: 'referral',
      at: night,
      body: { ...referralKind.example, urgency: 'this-week' },
      supersedes: [referral.id],
      reason: 'Heard wrong.',
    })
    expect(owed(referral, corrected).owed).toMatchObject([
      { id: `urgent-referral:${referral.id}`, dueBy: '2026-03-10T21:09:00.000Z' },
    ])
  })

  it('is no longer owed after a death', () => {
    const death = make({ kind: 'death', at: '2026-03-04T01:00:00.000Z' })
    expect(owed(calledIn(make, 'today'), death)).toMatchObject({ owed: [], closed: [{ because: 'death' }] })
  })

  it('follows the house when it set a time of its own', () => {
    const policy = { policy: 'owed.referral.today', value: '4 hours', because: 'We are open at night.' }
    const set = make({ kind: 'house-policy', at: '2026-01-01T10:00:00.000Z', body: policy })
    expect(owed(calledIn(make, 'today'), set).owed).toMatchObject([
      { dueFrom: night, dueBy: '2026-03-04T01:09:00.000Z' },
    ])
  })
})

describe('a routine first call', () => {
  const make = entryMaker()
  const referral = calledIn(make, 'routine')

  it('that nothing follows is rung after a week or two, and again after every call that agreed something', () => {
    expect(owed(referral).owed).toMatchObject([
      {
        what: 'referral-waiting',
        who: 'desk',
        dueFrom: '2026-03-10T21:09:00.000Z',
        dueBy: '2026-03-17T21:09:00.000Z',
      },
    ])
    const tried = spoke(make, '2026-03-11T10:00:00.000Z', 'no')
    const spoken = spoke(make, '2026-03-12T10:00:00.000Z', 'yes')
    expect(owed(referral, tried).owed[0]).toMatchObject({ dueBy: '2026-03-17T21:09:00.000Z' })
    expect(owed(referral, tried).owed[0]?.why.map(({ code }) => code)).toContain('tried-without-answer')
    expect(owed(referral, tried, spoken).owed[0]).toMatchObject({ dueBy: '2026-03-26T10:00:00.000Z' })
  })

  it.each(['ear-findings', 'baseline', 'choice', 'booking'] as const)('is settled by what follows it: %s', (kind) => {
    const next = make({ kind, at: '2026-03-09T10:00:00.000Z' })
    expect(owed(referral, next).closed).toContainEqual(
      expect.objectContaining({
        because: 'settled',
        by: next.id,
        item: expect.objectContaining({ what: 'referral-waiting' }),
      }),
    )
    expect(codes(referral, next)).not.toContain('referral-waiting')
  })

  it('is asked once, from the latest call, however often they called', () => {
    const again = calledIn(make, 'routine', '2026-03-05T10:00:00.000Z')
    expect(owed(referral, again).owed.map(({ dueBy }) => dueBy)).toEqual(['2026-03-19T10:00:00.000Z'])
  })
})
