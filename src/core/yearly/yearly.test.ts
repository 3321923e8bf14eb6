import { describe, expect, it } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { watching } from '#content/evidence/watching.ts'
import { countOwn, type OwnQuestion } from '../evidence/own/count-own.ts'
import { type OwnOutcome, ownOutcomes } from '../evidence/own/own-outcome.ts'
import { countUnits } from '../evidence/study.ts'
import { hashText } from '../journal/canonical.ts'
import { blinkRecovery } from '../results/blink-recovery.ts'
import { earForTests, fortyEars } from '../results/ears-for-tests.ts'
import { tractTimes } from '../results/tract-times.ts'
import { earChanges } from './ear-changes.ts'
import { earsOfFrozen, rulesOfFrozen } from './ears-of-frozen.ts'
import { freezeYear } from './freeze-year.ts'
import { type FrozenYear, frozenText, readFrozen } from './frozen-year.ts'
import { numbersChanged } from './numbers-changed.ts'
import { reportOf, reportText } from './report-of.ts'
import { rowsToGive } from './rows-to-give.ts'
import { whomToCall } from './whom-to-call.ts'

const lookedAt = '2026-11-30'
const dogs = { species: 'dog', procedure: 'teca-lbo' } as const
type Of = Pick<OwnQuestion, 'species' | 'procedure'>
const watched = (of: Of) => [
  { question: { ...of, outcome: 'facial_nerve_deficit_permanent', unit: 'ear' } as const, expected: 0.1 },
]
const about = {
  year: 2025,
  lookedAt,
  method: '1',
  rules: ownCounting,
  watching,
  watched,
  salt: 'sixteen letters and more',
}

/** Ears of every sort: two of one dog, one lost, one dead, one too young, a tract, a blink that came back, one cat. */
function mixedEars() {
  const all = (known: boolean | null) =>
    Object.fromEntries(ownOutcomes.map((one) => [one, known])) as Record<OwnOutcome, boolean | null>
  return [
    ...fortyEars(),
    earForTests(50, { on: '2025-12-20', known: all(false), followedUntil: '2026-11-01' }),
    earForTests(51, {
      on: '2025-03-01',
      tractOn: '2026-05-02',
      followedUntil: '2026-05-02',
      known: { ...all(false), deep_recurrence: true },
      blink: { lostOn: '2025-03-02', backOn: '2025-03-20', lastLookOn: '2025-06-01' },
    }),
    earForTests(52, { on: '2025-04-01', died: '2025-08-01', followedUntil: '2025-07-20' }),
    earForTests(53, { species: 'cat', procedure: 'traction', on: '2025-05-05', followedUntil: '2025-05-20' }),
    earForTests(54, { on: '2024-12-31', known: all(true), followedUntil: '2026-01-01' }),
    earForTests(55, { on: '2026-01-01', known: all(true), followedUntil: '2026-02-01' }),
  ]
}

function frozen(ears = mixedEars(), more: Partial<typeof about> = {}): FrozenYear {
  const made = freezeYear(ears, { ...about, ...more })
  if (made.kind === 'refusal') throw new Error(made.refusal.because)
  return made.answer
}

function reportOn(data: FrozenYear) {
  return reportOf(data, frozenText(data).hash)
}

describe('the frozen data of a year', () => {
  it('holds the ears of that year alone, a row for each, in an order that the salt gives', () => {
    const data = frozen()
    expect(data.rows).toHaveLength(44)
    expect(data.rows.map(({ ear }) => ear)).toEqual(Array.from({ length: 44 }, (_, i) => i + 1))
    expect(frozenText(frozen([...mixedEars()].reverse())).text).toBe(frozenText(data).text)
    expect(frozenText(frozen(mixedEars(), { salt: 'other letters, as many' })).hash).not.toBe(frozenText(data).hash)
  })

  it('leads back to nobody: no id of ours, no day of an operation', () => {
    const { text } = frozenText(frozen())
    expect(text).not.toMatch(/animal-\d|operation-\d|case:/)
    expect(text.match(/\d{4}-\d\d-\d\d/g)).toEqual([lookedAt])
  })

  it('keeps apart what is of the animal and of neither ear: lost among the ears, an event among the animals', () => {
    const both = { animal: 'animal-60', session: 'operation-60', ofNoSide: ['vestibular_permanent'] } as const
    const ears = [earForTests(60, both), earForTests(61, { ...both, side: 'RIGHT' }), earForTests(62)]
    const data = frozen(ears)
    expect(data.rows.map(({ known }) => known.includes('s')).sort()).toEqual([false, true, true])
    const { text, hash } = frozenText(data)
    expect(readFrozen(text, hash)).toEqual({ kind: 'answer', answer: data })
    const rates = reportOn(data).operations[0]?.rates ?? []
    const of = (unit: 'ear' | 'animal') =>
      rates.find((rate) => rate.outcome === 'vestibular_permanent' && rate.unit === unit)
    expect(of('ear')).toMatchObject({ events: 0, total: 0, lost: 3, ofNoSide: 2 })
    expect(of('animal')).toMatchObject({ events: 1, total: 1, lost: 1 })
    // A report without any has the same bytes as before there was such a number.
    expect(rates.filter((rate) => 'ofNoSide' in rate)).toEqual([of('ear')])
  })

  it('is read back only as it was written', () => {
    const { text, hash } = frozenText(frozen())
    expect(readFrozen(text, hash)).toMatchObject({ kind: 'answer', answer: { year: 2025 } })
    const changed = text.replace('"known":"nn', '"known":"yn')
    expect(changed).not.toBe(text)
    expect(readFrozen(changed, hash)).toMatchObject({ refusal: { because: 'other-bytes' } })
    const short = text.replace('"known":"n', '"known":"')
    expect(readFrozen(short, hashText(short))).toMatchObject({ refusal: { because: 'not-frozen-data' } })
    const lacking = text.replace('"format":1,', '')
    expect(readFrozen(lacking, hashText(lacking))).toMatchObject({ refusal: { because: 'not-frozen-data' } })
  })

  it('is refused for a year that is not over, without any ear, and with a salt that could be guessed', () => {
    expect(freezeYear(mixedEars(), { ...about, year: 2026 })).toMatchObject({ refusal: { because: 'year-not-over' } })
    expect(freezeYear(mixedEars(), { ...about, year: 2023 })).toMatchObject({
      refusal: { because: 'nothing-operated' },
    })
    expect(freezeYear(mixedEars(), { ...about, salt: 'short' })).toMatchObject({
      refusal: { because: 'salt-too-short' },
    })
    expect(freezeYear(mixedEars(), { ...about, lookedAt: '2025-12-31' })).toMatchObject({ kind: 'refusal' })
  })
})

describe('what is counted from the frozen rows', () => {
  const data = frozen()
  const [then, now] = [mixedEars().filter(({ on }) => on.startsWith('2025-')), earsOfFrozen(data)]

  it('is what is counted from the ears themselves, for every outcome and unit', () => {
    const rules = rulesOfFrozen(data)
    for (const outcome of ownOutcomes)
      for (const unit of countUnits) {
        const question = { ...dogs, outcome, unit }
        const { period: _, ...counted } = countOwn(question, now, lookedAt, rules)
        const { period: __, ...true_ } = countOwn(question, then, lookedAt, ownCounting)
        expect(counted).toEqual(true_)
      }
    expect(numbersChanged(now, then, lookedAt, rules)).toEqual([])
  })

  it('is the same over time, for tracts, deaths and the blink', () => {
    const rules = { enough: 10, deathWithinDays: 90 }
    const dogsOf = (ears: typeof now) => ears.filter(({ species }) => species === 'dog')
    const [counted, real] = [tractTimes(dogsOf(now), rules), tractTimes(dogsOf(then), rules)]
    if (counted.kind === 'refusal' || real.kind === 'refusal') throw new Error('Ears are followed.')
    expect(counted.answer.steps).toEqual(real.answer.steps)
    expect(counted.answer.at).toEqual(real.answer.at)
    expect(blinkRecovery(dogsOf(now))).toEqual(blinkRecovery(dogsOf(then)))
  })

  it('stands in the report: 2 of 31, nine lost, both denominators; a share withheld where too few are known', () => {
    const report = reportOn(frozen(fortyEars()))
    const rate = report.operations[0]?.rates.find(
      ({ outcome, unit }) => outcome === 'facial_nerve_deficit_permanent' && unit === 'ear',
    )
    expect(rate).toMatchObject({ events: 2, total: 31, lost: 9, said: 'shown', share: 0.064516 })
    expect(rate?.wilson?.map((end) => Math.round(1000 * end) / 10)).toEqual([1.8, 20.7])
    expect(rate?.bestAndWorst).toEqual([0.05, 0.275])
    expect(report.operations[0]?.completeness).toMatchObject({ ears: 40, animals: 34, heardOf: 40 })
    const few = reportOn(frozen(fortyEars().slice(0, 12)))
    const withheld = few.operations[0]?.rates.find(({ said }) => said === 'withheld')
    expect(withheld).toMatchObject({ share: null, exact: null, wilson: null })
  })

  it('comes out the same to the byte, whatever the rules of the house are by now', () => {
    const { text, hash } = frozenText(data)
    const read = readFrozen(text, hash)
    if (read.kind === 'refusal') throw new Error(read.refusal.because)
    expect(reportText(reportOn(read.answer))).toEqual(reportText(reportOn(data)))
    const later = frozen(mixedEars(), { rules: { ...ownCounting, shownFrom: { ...ownCounting.shownFrom, value: 5 } } })
    expect(reportText(reportOn(later)).hash).not.toBe(reportText(reportOn(data)).hash)
  })
})

describe('rows for somebody outside', () => {
  it('leave out the operations that too few animals share, and name them', () => {
    const given = rowsToGive(frozen(), 5)
    expect(given.leftOut).toEqual([{ species: 'cat', procedure: 'traction', year: '2025' }])
    expect(given.ears).toHaveLength(43)
    expect(Object.keys(given.ears[0] ?? {})).not.toContain('dueDays')
  })
})

describe('what contradicts a frozen year', () => {
  const then = [earForTests(1, { known: { deep_recurrence: false }, followedUntil: '2026-02-01' })]
  const changes = (more: Parameters<typeof earForTests>[1]) =>
    earChanges(
      then,
      [earForTests(1, { known: { deep_recurrence: false }, followedUntil: '2026-02-01', ...more })],
      about,
    ).map(({ what, before, after }) => [what, before, after])

  it('is a late tract, whenever it comes', () => {
    expect(changes({ known: { deep_recurrence: true }, tractOn: '2027-03-01' })).toEqual([
      ['deep_recurrence', 'known-no', 'known-yes'],
      ['tract-on', 'no-day', '2027-03-01'],
    ])
  })

  it('is an answer that was taken back, another operation, another animal, an ear more or fewer', () => {
    expect(changes({ known: { deep_recurrence: null } })).toEqual([['deep_recurrence', 'known-no', 'known-not']])
    expect(changes({ side: 'RIGHT', known: { deep_recurrence: false } })).toEqual([
      ['operation-as', 'dog, teca-lbo, LEFT', 'dog, teca-lbo, RIGHT'],
    ])
    expect(changes({ animal: 'animal-9', known: { deep_recurrence: false } })).toEqual([
      ['same-animal', 'as-then', 'otherwise-now'],
    ])
    expect(earChanges(then, [], about).map(({ after }) => after)).toEqual(['not-on-record'])
    expect(earChanges([], then, about).map(({ after }) => after)).toEqual(['on-record'])
  })

  it('is not an ordinary visit that found nothing, nor a death of later, nor an ear of another year', () => {
    expect(
      changes({ known: { deep_recurrence: false, resolution_or_improved: true }, followedUntil: '2027-01-01' }),
    ).toEqual([])
    expect(changes({ known: { deep_recurrence: false }, died: '2027-01-01' })).toEqual([])
    expect(changes({ known: { deep_recurrence: false }, died: '2026-01-01' })).toEqual([
      ['died-on', 'no-day', '2026-01-01'],
    ])
    expect(earChanges([], [earForTests(2, { on: '2024-05-05' })], about)).toEqual([])
  })

  it('is said in the numbers of then and now', () => {
    const worse = [earForTests(1, { known: { deep_recurrence: true }, followedUntil: '2026-02-01' })]
    const first = numbersChanged(then, worse, lookedAt, ownCounting).find(({ unit }) => unit === 'ear')
    expect(first).toMatchObject({
      outcome: 'deep_recurrence',
      unit: 'ear',
      before: { events: 0, total: 1 },
      after: { events: 1, total: 1 },
    })
  })
})

describe('whom to call', () => {
  it('is first whoever was never heard of, then the longest silence; never the bereaved, nor before the year is over', () => {
    const ears = [
      earForTests(1, { followedUntil: '2025-06-01' }),
      earForTests(2, { followedUntil: null }),
      earForTests(3, { followedUntil: '2025-02-01' }),
      earForTests(4, { died: '2025-05-01' }),
      earForTests(5, { on: '2025-12-24' }),
      earForTests(6, { known: { resolution_or_improved: true } }),
    ]
    expect(whomToCall(ears, lookedAt, ownCounting).map(({ stream }) => stream)).toEqual(['case:2', 'case:3', 'case:1'])
  })
})
