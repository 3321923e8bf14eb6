import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { call as callKind } from '#core/journal/kinds/call.ts'
import { costSoFar } from '#core/journal/kinds/cost-so-far.ts'
import { estimate } from '#core/journal/kinds/estimate.ts'
import { fileOf } from './files-for-tests.ts'
import { owedOf } from './owed.ts'
import { sayOwed } from './owed-wording.ts'

const make = entryMaker()
const gbp = (amount: string) => ({ amount, currency: 'GBP' })
const on = (at: string) => ({ at, zone: 'Europe/London', precision: 'minute', by: 'clock' }) as const
const at = (hour: string) => `2026-03-02T${hour}:00.000Z`

/** One line of 1000 to 1200 for the ward, under a ceiling of 2000 unless said otherwise. */
function edition(number: number, hour: string, answered: string | null, wanted: Partial<BodyOf<'estimate'>> = {}) {
  const lines = [{ part: 'ward' as const, what: 'Ward', low: gbp('1000.00'), high: gbp('1200.00') }]
  const answer = answered === null ? null : { said: 'accepted' as const, by: 'contact-1', on: on(at(answered)) }
  const body = {
    ...estimate.example,
    edition: number,
    lines,
    ceiling: gbp('2000.00'),
    deposit: null,
    answer,
    ...wanted,
  }
  return make({ kind: 'estimate', at: at(hour), body })
}
const cost = (hour: string, amount: string, wanted: Partial<BodyOf<'cost-so-far'>> = {}) =>
  make({ kind: 'cost-so-far', at: at(hour), body: { ...costSoFar.example, amount: gbp(amount), ...wanted } })
const call = (hour: string, wanted: Partial<BodyOf<'call'>> = {}) =>
  make({ kind: 'call', at: at(hour), body: { ...callKind.example, about: 'estimate', ...wanted } })

const first = edition(1, '07:00', '07:30')

function read(what: 'owner-about-costs' | 'estimate-to-answer', ...entries: readonly Entry[]) {
  const { owed, closed } = owedOf(fileOf(entries), procedures, { rules: owedRules })
  return {
    owed: owed.filter((item) => item.what === what),
    closed: closed.filter(({ item }) => item.what === what).map(({ because, by }) => ({ because, by })),
  }
}
const called = (...entries: readonly Entry[]) => read('owner-about-costs', first, ...entries)
const answered = (...entries: readonly Entry[]) => read('estimate-to-answer', first, ...entries)

describe('the call about rising costs', () => {
  it('is owed from the moment the house’s level is reached, not before', () => {
    expect(called(cost('09:00', '1599.99'))).toEqual({ owed: [], closed: [] })
    const over = cost('10:00', '0.01')
    const { owed } = called(cost('09:00', '1599.99'), over)
    expect(owed).toMatchObject([
      { id: `owner-about-costs:${over.id}`, who: 'desk', dueFrom: at('10:00'), dueBy: '2026-03-03T10:00:00.000Z' },
    ])
  })

  it('says the sums, and is late from the moment the ceiling is passed', () => {
    const { owed } = called(cost('09:00', '1700.00'), cost('11:00', '300.01'))
    expect(owed).toMatchObject([{ dueFrom: at('09:00'), dueBy: at('11:00') }])
    const [item] = owed
    expect(item && sayOwed(item, owedInEnglish).why).toContain(
      'Spent so far 2000.01 GBP: the ceiling of 2000.00 GBP is',
    )
    // Passed in one step: late at once.
    expect(called(cost('09:00', '2000.01')).owed).toMatchObject([{ dueFrom: at('09:00'), dueBy: at('09:00') }])
  })

  it('vanishes with a call about the estimate that reached the owner after that moment, and with no other', () => {
    const over = cost('09:00', '1700.00')
    expect(called(over, call('08:59')).owed).toHaveLength(1)
    expect(called(over, call('09:30', { about: 'ward' })).owed).toHaveLength(1)
    expect(called(over, call('09:30', { reached: 'message-left' })).owed).toHaveLength(1)
    const reached = call('09:30')
    expect(called(over, reached)).toEqual({ owed: [], closed: [{ because: 'settled', by: reached.id }] })
    const late = call('12:00')
    expect(called(cost('09:00', '2000.01'), late).closed).toEqual([{ because: 'settled-late', by: late.id }])
  })

  it('is owed again once it has become worse than what the owner was told, and not for more of the same', () => {
    const told = [cost('09:00', '1700.00'), call('09:30')]
    expect(called(...told, cost('10:00', '100.00')).owed).toEqual([])
    const passing = cost('11:00', '200.01')
    const { owed, closed } = called(...told, cost('10:00', '100.00'), passing)
    expect(owed).toMatchObject([{ id: `owner-about-costs:${passing.id}`, dueBy: at('11:00') }])
    expect(closed).toHaveLength(1)
  })

  it('keeps to the accepted ceiling: a higher one that nobody accepted ends nothing, its acceptance does', () => {
    const over = cost('09:00', '1700.00')
    const higher = (reply: string | null) => edition(2, '10:00', reply, { ceiling: gbp('4000.00') })
    expect(called(over, higher(null)).owed).toHaveLength(1)
    const accepted = higher('10:30')
    expect(called(over, accepted)).toEqual({ owed: [], closed: [{ because: 'not-needed', by: accepted.id }] })
  })

  it('asks a person where two currencies have no sum, and ends with the death of the animal', () => {
    const euros = cost('09:00', '10.00', { amount: { amount: '10.00', currency: 'EUR' } })
    expect(called(euros).owed).toMatchObject([{ why: [{ code: 'costs-without-sum' }] }])
    const died = make({ kind: 'death', at: at('12:00') })
    expect(called(cost('09:00', '1700.00'), died)).toEqual({ owed: [], closed: [{ because: 'death', by: died.id }] })
  })
})

describe('the answer to a new edition', () => {
  it('is owed while nobody answered it, and not for the first edition', () => {
    expect(read('estimate-to-answer', edition(1, '07:00', null))).toEqual({ owed: [], closed: [] })
    const second = edition(2, '10:00', null)
    expect(answered(second).owed).toMatchObject([
      { id: `estimate-to-answer:${second.id}`, who: 'desk', about: { edition: '2' }, dueFrom: at('10:00') },
    ])
  })

  it('vanishes with a dated answer, also a no; a newer edition and death end it', () => {
    expect(answered(edition(2, '10:00', '10:30'))).toMatchObject({ owed: [], closed: [{ because: 'settled' }] })
    const no = { answer: { said: 'declined' as const, by: 'contact-1', on: on('2026-03-05T09:00:00.000Z') } }
    expect(answered(edition(2, '10:00', null, no))).toMatchObject({ owed: [], closed: [{ because: 'settled-late' }] })
    const third = edition(3, '11:00', '11:30')
    expect(answered(edition(2, '10:00', null), third).closed).toMatchObject([
      { because: 'not-needed', by: third.id },
      { because: 'settled', by: third.id },
    ])
    const died = make({ kind: 'death', at: at('12:00') })
    expect(answered(edition(2, '10:00', null), died).closed).toEqual([{ because: 'death', by: died.id }])
  })

  it('keeps its name when the acceptance takes the place of the unanswered entry', () => {
    const second = edition(2, '10:00', null)
    const accepted = { ...edition(2, '10:00', '10:30'), supersedes: [second.id], reason: 'Accepted' }
    const { closed } = owedOf(fileOf([first, second, accepted]), procedures, { rules: owedRules })
    expect(closed.map(({ item }) => item.id)).toContain(`estimate-to-answer:${second.id}`)
  })
})
