import { describe, expect, it } from 'vitest'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { theatreListInEnglish } from '#content/wording/app-theatre-list.ts'
import { leafletEdition } from '#content/wording/leaflet.ts'
import { fingerprintOf } from '#core/agreement/fingerprint.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { agreement } from '#core/journal/kinds/agreement.ts'
import { anaestheticAssessment } from '#core/journal/kinds/anaesthetic-assessment.ts'
import { bloodTest } from '#core/journal/kinds/blood-test.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { plannedLine } from '#core/journal/kinds/planned-line.ts'
import { weight } from '#core/journal/kinds/weight.ts'
import { fill } from '#core/outcome/finding.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { owedOf } from '#core/owed/owed.ts'
import { tansy } from '#demo/spaniel.ts'
import { theatreRules } from '#documents/agreement/consent-today.ts'
import { theatreListOf } from './theatre-list.ts'

const march = { from: '2026-03-01', until: '2026-03-31' }
const at = '2026-03-10T09:00:00.000Z'
const plannedFor = { at, zone: 'Europe/London', precision: 'minute', by: 'person' } as const

function listOf(files: readonly (readonly Entry[])[], days = march) {
  const cases = files.map((entries, number) => {
    const file = { ...fileOf(entries), stream: `case:000${number}` }
    return { file, owed: owedOf(file, procedures, { rules: owedRules }).owed }
  })
  return theatreListOf(cases, theatreRules, days)
}

/** Blood, group, class and airway plan on record. */
function assessed(make: ReturnType<typeof entryMaker>): Entry[] {
  return [
    ...(['haematology', 'chemistry', 'clotting'] as const).map((panel) =>
      make({ kind: 'blood-test', body: { ...bloodTest.example, panel } }),
    ),
    make({ kind: 'blood-type' }),
    make({ kind: 'anaesthetic-assessment' }),
  ]
}

/** An animal that is ready: weighed, looked at, agreed, planned and checked. */
function ready(change: { readonly plan?: object; readonly side?: 'RIGHT' } = {}) {
  const make = entryMaker()
  const plan = { ...agreement.example.plan, surgeon: 'person-surgeon', leaflet: leafletEdition }
  const agreed = make({
    kind: 'agreement',
    body: { ...agreement.example, plan: { ...plan, ...change.plan }, fingerprint: fingerprintOf(plan) },
  })
  const planned = { ...plannedLine.example, weight: weight.example.weight }
  const line = make({ kind: 'planned-line', body: planned, at: '2026-03-09T17:00:00.000Z' })
  return [
    make({ kind: 'identity' }),
    agreed,
    make({
      kind: 'booking',
      body: { ...booking.example, side: change.side ?? 'LEFT', agreement: agreed.id, plannedFor },
    }),
    make({ kind: 'baseline' }),
    ...assessed(make),
    make({ kind: 'weight', at: '2026-03-10T07:30:00.000Z' }),
    line,
    make({
      kind: 'second-check',
      author: { kind: 'person', person: 'person-nurse' },
      body: { of: [line.id], verdict: 'agrees', text: null, plan: null },
    }),
  ]
}

describe('the theatre list', () => {
  it('shows an animal that is ready, with its last meal at clock times', () => {
    const [day, ...more] = listOf([ready()])
    expect(more).toEqual([])
    expect(day?.day).toBe('2026-03-10')
    expect(day?.lines).toMatchObject([
      { name: 'Bramble', side: 'LEFT', procedure: 'teca-lbo', state: 'agreed', missing: [], sides: [] },
    ])
    // Grown animals go 4 to 6 hours without food: the practice page named in content/follow-up.
    expect(day?.lines[0]?.fasting).toMatchObject({
      kind: 'times',
      lastMealFrom: '2026-03-10T03:00:00.000Z',
      lastMealBy: '2026-03-10T05:00:00.000Z',
    })
    expect(day?.lines[0]?.admission).toMatchObject({ precision: 'day' })
  })

  it('asks for consent again when the plan under it is not the one it was given for', () => {
    const ceiling = { amount: '5000.00', currency: 'GBP' }
    const [day] = listOf([ready({ plan: { ceiling } })])
    expect(day?.lines[0]).toMatchObject({
      state: 'not-agreed',
      missing: [{ code: 'consent-fingerprint', level: 'block' }],
    })
  })

  it('blocks a booking of the other side, and says both that consent and side disagree', () => {
    const [day] = listOf([ready({ side: 'RIGHT' })])
    expect(day?.lines[0]?.missing.map(({ code, level }) => `${level} ${code}`)).toEqual([
      'block side-disagreement',
      'block consent',
    ])
    expect(day?.lines[0]?.state).toBe('not-agreed')
  })

  it('names what is missing of an animal that was only booked, worst first, in sentences', () => {
    const make = entryMaker()
    const bare = [
      make({ kind: 'identity', body: { ...identity.example, born: null } }),
      make({ kind: 'medicine-before', body: { ...medicine, substance: null } }),
      make({ kind: 'booking', body: { ...booking.example, agreement: null, plannedFor, anaesthetist: null } }),
    ]
    const line = listOf([bare])[0]?.lines[0]
    expect(line?.missing.map(({ code, about }) => fill(theatreListInEnglish.missing[code], about))).toEqual([
      'Consent for this side, procedure and surgeon',
      'Face, eye and balance before any sedative',
      'Weight on the scale',
      'Blood cells',
      'Blood chemistry',
      'ASA class and airway plan',
      'What is in “Ear drops”',
      'How long this animal goes without food',
      'Clotting',
      'The blood group',
      'The planned doses',
      'Who gives the anaesthetic',
    ])
    expect(line?.fasting).toEqual({ kind: 'unknown', missing: ['age', 'weight'] })
  })

  it('weighs an untyped cat more than an untyped dog, and asks whether the jaw opens', () => {
    const untyped = (species: 'dog' | 'cat') =>
      ready().map((entry) =>
        entry.kind === 'identity'
          ? { ...entry, body: { ...identity.example, species } }
          : entry.kind === 'anaesthetic-assessment'
            ? { ...entry, body: { ...anaestheticAssessment.example, jawOpens: 'not-assessed' } }
            : entry,
      )
    const missing = (entries: readonly Entry[]) =>
      listOf([entries.filter(({ kind }) => kind !== 'blood-type')])[0]?.lines[0]?.missing
    // Cats are typed before any transfusion: transfusion texts; the weight is the house's.
    expect(missing(untyped('cat'))).toMatchObject([
      { code: 'blood-type', level: 'confirm', settledBy: 'blood-type', about: { because: 'none' } },
      { code: 'jaw', level: 'confirm', settledBy: 'anaesthetic-assessment', sources: ['house-judgement'] },
    ])
    expect(missing(untyped('dog'))?.map(({ code, level }) => `${level} ${code}`)).toEqual([
      'confirm jaw',
      'note blood-type',
    ])
  })

  it('does not take the assessment of an earlier operation for this one', () => {
    const make = entryMaker({}, 3)
    const earlier = { kind: 'operation', animal: 'animal-1', operation: 'operation-0' } as const
    const entries = ready().map((entry) =>
      entry.kind === 'anaesthetic-assessment' ? { ...entry, subject: earlier } : entry,
    )
    expect(listOf([entries])[0]?.lines[0]?.missing.map(({ code }) => code)).toEqual(['assessment'])
    const own = make({ kind: 'anaesthetic-assessment', subject: { kind: 'animal', animal: 'animal-1' } })
    expect(listOf([[...entries, own]])[0]?.lines[0]?.missing).toEqual([])
  })

  it('does not let two weights stand side by side unsettled', () => {
    const entries = ready()
    const weight = entries.find(({ kind }) => kind === 'weight')
    const make = entryMaker({}, 2)
    const other = (value: string) =>
      make({
        kind: 'weight',
        at: '2026-03-10T07:30:00.000Z',
        supersedes: [weight?.id ?? ''],
        reason: 'Read again.',
        body: { weight: { value, unit: 'kg' }, typed: null, how: 'scale', bodyCondition: null },
      })
    const [day] = listOf([[...entries, other('8.2'), other('12.8')]])
    expect(day?.lines[0]?.missing).toMatchObject([
      { code: 'conflicts', level: 'block', about: { kinds: 'weight' } },
      // The doses were checked for neither of the two.
      { code: 'second-check', level: 'confirm' },
    ])
  })

  it('stands in the order of days and hours, leaves out the dead and the days not asked for', () => {
    const make = entryMaker({}, 3)
    const body = { ...booking.example, agreement: null }
    const early = [
      make({ kind: 'booking', body: { ...body, plannedFor: { ...plannedFor, at: '2026-03-10T07:00:00.000Z' } } }),
    ]
    const dead = [make({ kind: 'booking', body: { ...body, plannedFor } }), make({ kind: 'death' })]
    const april = [
      make({ kind: 'booking', body: { ...body, plannedFor: { ...plannedFor, at: '2026-04-02T07:00:00.000Z' } } }),
    ]
    const days = listOf([ready(), early, dead, april])
    expect(days.map(({ day }) => day)).toEqual(['2026-03-10'])
    expect(days[0]?.lines.map(({ stream }) => stream)).toEqual(['case:0001', 'case:0000'])
    expect(listOf([april], { from: '2026-04-02', until: '2026-04-02' })).toHaveLength(1)
  })

  it('shows a finished operation as done, without asking for anything', () => {
    const [day] = listOf([tansy().entries], { from: '2025-03-11', until: '2025-03-11' })
    expect(day?.lines).toMatchObject([{ name: 'Tansy', side: 'LEFT', state: 'done', missing: [] }])
  })
})

const medicine = {
  written: 'Ear drops',
  substance: null,
  route: 'ear',
  dose: null,
  from: null,
  until: null,
  ongoing: true,
  effect: 'unknown',
} as const
