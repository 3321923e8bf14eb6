import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { call as callKind } from '#core/journal/kinds/call.ts'
import { check as checkKind } from '#core/journal/kinds/check.ts'
import { lateEvent } from '#core/journal/kinds/late-event.ts'
import { answered, operatedEar } from '#core/questionnaire/files-for-tests.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import { sayOwed } from './owed-wording.ts'

const at = '2027-03-01T10:00:00.000Z'
const later = (hours: number) => new Date(Date.parse(at) + hours * 3_600_000).toISOString()

function course() {
  const make = entryMaker()
  const entries = [operatedEar(make, 'LEFT', '2026-03-04'), operatedEar(make, 'RIGHT', '2026-03-04')]
  const owedBy = (all: readonly Entry[]) => owedOf(fileOf(all), procedures, { rules: owedRules })
  const ofOwner = (all: readonly Entry[]) =>
    owedBy([...entries, ...all]).owed.filter(({ what }) => what.startsWith('owner-'))
  const ended = (all: readonly Entry[]) =>
    owedBy([...entries, ...all]).closed.filter(({ item }) => item.what.startsWith('owner-'))
  const check = (side: 'LEFT' | 'RIGHT', seenBy: BodyOf<'check'>['seenBy'], when: string) =>
    make({
      kind: 'check',
      at: when,
      subject: { kind: 'ear', animal: 'animal-1', side },
      body: { ...checkKind.example, seenBy },
    })
  const rang = (reached: BodyOf<'call'>['reached'], when: string, about: BodyOf<'call'>['about'] = 'worry') =>
    make({ kind: 'call', at: when, body: { ...callKind.example, reached, about } })
  return { make, entries, owedBy, ofOwner, ended, check, rang }
}

describe('what an owner reports in the answers', () => {
  it('is rung about the same day and seen within two, each side by itself and in words', () => {
    const { make, ofOwner } = course()
    const owed = ofOwner([answered(make, at, { 'swelling.LEFT': 'yes', 'swelling.RIGHT': 'cannot-tell', head: 'no' })])
    expect(owed.map((item) => [sayOwed(item, owedInEnglish).what, item.side, item.dueBy])).toEqual([
      ['Owner reports swelling, LEFT ear: ring the owner', 'LEFT', later(12)],
      ['Owner reports swelling, LEFT ear: look at it', 'LEFT', later(48)],
    ])
    expect(owed[0]?.facts.every(({ known }) => known === 'house')).toBe(true)
  })

  it('is owed also while the answers are only saved, and nothing is owed of answers that report nothing', () => {
    const { make, ofOwner } = course()
    expect(ofOwner([answered(make, at, { 'eye-sore.RIGHT': 'yes' }, { finished: false })])).toHaveLength(2)
    expect(ofOwner([answered(make, at, { 'swelling.LEFT': 'no', 'eye.LEFT': 'cannot-tell' })])).toEqual([])
  })

  it('is settled by a talk for the call and by a look of that ear for the look; words and photographs are no look', () => {
    const { make, ofOwner, ended, check, rang } = course()
    const told = answered(make, at, { 'swelling.LEFT': 'yes' })
    const what = (all: readonly Entry[]) => ofOwner([told, ...all]).map((item) => item.what)
    expect(what([rang('no', later(1)), rang('message-left', later(2))])).toEqual([
      'owner-reported',
      'owner-reported-look',
    ])
    expect(what([rang('yes', later(1))])).toEqual(['owner-reported-look'])
    expect(what([check('LEFT', 'owner-photograph', later(3)), check('RIGHT', 'us', later(3))])).toHaveLength(2)
    expect(what([check('LEFT', 'us', later(3))])).toEqual([])
    expect(ended([told, rang('yes', later(30))]).map(({ because }) => because)).toEqual(['settled-late'])
  })

  it('hands over to a late event, which owes its own look', () => {
    const { make, owedBy, entries } = course()
    const event = make({
      kind: 'late-event',
      at: later(2),
      subject: { kind: 'ear', animal: 'animal-1', side: 'LEFT' },
      body: { ...lateEvent.example, what: 'swelling', operation: 'operation-LEFT', seenBy: 'owner' },
    })
    const owed = owedBy([...entries, answered(make, at, { 'swelling.LEFT': 'yes' }), event]).owed
    expect(owed.map(({ what }) => what).filter((what) => /owner-|late-event/.test(what))).toEqual(['late-event-look'])
  })

  it('stays owed when the owner changes the answer afterwards, and says so', () => {
    const { make, ofOwner } = course()
    const told = answered(make, at, { 'swelling.LEFT': 'yes' })
    const changed = answered(
      make,
      later(1),
      { 'swelling.LEFT': 'no' },
      { entry: { supersedes: [told.id], reason: 'Changed by the owner.' } },
    )
    const owed = ofOwner([told, changed])
    expect(owed.map(({ what }) => what)).toEqual(['owner-reported', 'owner-reported-look'])
    expect(sayOwed(owed[0] as never, owedInEnglish).why).toContain('The answer was changed on 1 March 2027')
    const withdrawn = make({
      kind: 'withdrawal',
      at: later(2),
      withdraws: told.id,
      reason: 'Another animal.',
      body: { because: 'wrong' },
    } as never)
    expect(ofOwner([told, withdrawn])).toEqual([])
  })

  it('was talked over already when somebody of the house took the answers by phone; the look stays owed', () => {
    const { make, ofOwner } = course()
    const taken = answered(
      make,
      at,
      { 'swelling.LEFT': 'yes' },
      { by: 'phone', entry: { author: { kind: 'person', person: 'person-nurse' } } },
    )
    expect(ofOwner([taken]).map(({ what }) => what)).toEqual(['owner-reported-look'])
  })

  it('is owed no more after a death', () => {
    const { make, ofOwner, ended } = course()
    const all = [answered(make, at, { 'swelling.LEFT': 'yes' }), make({ kind: 'death', at: later(1) })]
    expect(ofOwner(all)).toEqual([])
    expect(new Set(ended(all).map(({ because }) => because))).toEqual(new Set(['death']))
  })

  it('written in words, or with a wish to be phoned, is answered within two days', () => {
    const { make, ofOwner, rang } = course()
    for (const marked of [{ 'anything-else': 'He plays again.' }, { 'phone-me': 'yes' }] as const) {
      const told = answered(make, at, marked)
      expect(ofOwner([told]).map(({ what, dueBy }) => [what, dueBy])).toEqual([['owner-answer-to-read', later(48)]])
      expect(ofOwner([told, rang('yes', later(3))])).toEqual([])
    }
    expect(ofOwner([answered(make, at, { 'phone-me': 'no' })])).toEqual([])
  })
})

describe('the status after a year beside the answers', () => {
  const yearOf = (all: readonly Entry[]) => {
    const { entries, owedBy } = course()
    return owedBy([...entries, ...all]).owed.filter(({ id }) => id.startsWith('twelve-months:'))
  }
  const tries = (make: ReturnType<typeof entryMaker>) =>
    (['phone', 'email', 'phone'] as const).map((channel, count) =>
      make({
        kind: 'call',
        at: `2027-02-0${count + 1}T10:00:00.000Z`,
        body: { ...callKind.example, channel, reached: 'no', about: 'twelve-months' },
      }),
    )

  it('is not settled by an owner’s answers: a person writes it, and they are named among the reasons', () => {
    const make = entryMaker({}, 7)
    const [left] = yearOf([answered(make, at, { 'ear-now.LEFT': 'better' })])
    expect([left?.what, left?.why.map(({ code }) => code)]).toEqual([
      'twelve-months',
      expect.arrayContaining(['owner-answered']),
    ])
  })

  it('three tries over two ways that reach nobody make unknown a result; an owner who answered was reached', () => {
    const make = entryMaker({}, 7)
    expect(yearOf(tries(make)).map(({ what }) => what)).toEqual(['unknown-may-be-recorded', 'unknown-may-be-recorded'])
    const told = answered(make, at, { head: 'cannot-tell' })
    expect(yearOf([...tries(make), told]).map(({ what }) => what)).toEqual(['twelve-months', 'twelve-months'])
  })
})
