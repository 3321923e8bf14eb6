import { describe, expect, it } from 'vitest'
import { ownCounting } from '#content/evidence/own-counting.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { agreementIn } from '#core/agreement/conversation.ts'
import { fingerprintOf } from '#core/agreement/fingerprint.ts'
import { consentOf } from '#core/agreement/state.ts'
import { missingInAgreement } from '#core/chapters/missing-agreed.ts'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { agreement } from '#core/journal/kinds/agreement.ts'
import { choice as choiceKind } from '#core/journal/kinds/choice.ts'
import { estimate } from '#core/journal/kinds/estimate.ts'
import { bothCut, checkOn, cutOf, normal, operated, weak } from '#core/nerve-course/course-for-tests.ts'
import { nerveCoursesOf } from '#core/nerve-course/nerve-course.ts'
import { fileOf } from '#core/owed/files-for-tests.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { owedOf } from '#core/owed/owed.ts'
import { gatesOf } from '#core/theatre/stamp-gates.ts'
import { missingBeforeOperation } from '#core/theatre/theatre-missing.ts'
import { theatreRules } from '#documents/agreement/consent-today.ts'
import { firstFaceOf } from './first-face.ts'
import { needsOf } from './needs.ts'
import { secondSideAhead, secondSideOf } from './second-side.ts'

/** The left ear is cut on 4 March 2026; the right one is chosen on 1 September and booked for the 15th, 09:00 in London. */
const chosenAt = '2026-09-01T11:00:00.000Z'
const plannedFor = '2026-09-15T08:00:00.000Z'
const right = { kind: 'ear', animal: 'animal-1', side: 'RIGHT' } as const
const both: typeof agreement.example.plan = {
  ...agreement.example.plan,
  ears: [
    { side: 'LEFT', procedure: 'teca-lbo' },
    { side: 'RIGHT', procedure: 'teca-lbo' },
  ],
}
const agreedBoth = { ...agreement.example, plan: both, fingerprint: fingerprintOf(both) }
const accepted = {
  ...estimate.example,
  answer: {
    said: 'accepted',
    by: 'contact-1',
    on: { at: '2026-02-22T10:00:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' },
  },
} as const

/** All that the first side had: baseline, weight, estimate and a consent that names both ears. */
function firstSide(make: MakeEntry): Entry[] {
  return [
    ...operated(make),
    make({ kind: 'weight', at: '2026-03-04T07:10:00.000Z' }),
    make({ kind: 'estimate', at: '2026-02-22T09:00:00.000Z', body: accepted }),
    make({ kind: 'agreement', at: '2026-02-22T10:30:00.000Z', body: agreedBoth }),
    make({ kind: 'choice', at: '2026-02-21T10:30:00.000Z' }),
  ]
}

const chosen = (make: MakeEntry) => make({ kind: 'choice', at: chosenAt, subject: right })

function booked(make: MakeEntry, named: string | null): Entry {
  const [booking] = cutOf(make, 'RIGHT', plannedFor, 'operation-2')
  if (!booking) throw new Error('A cut begins with its booking.')
  return {
    ...booking,
    happenedAt: { ...booking.happenedAt, at: '2026-09-01T12:00:00.000Z' },
    body: { ...(booking.body as object), agreement: named } as never,
  }
}

function fileWith(entries: readonly Entry[]) {
  const file = fileOf(entries)
  const operations = operationsOf(file)
  const operation = operations.find(({ side }) => side === 'RIGHT')
  return { file, operations, operation: operation ?? null }
}

/** How each need stands. */
function states(entries: readonly Entry[]): Record<string, string> {
  const { file } = fileWith(entries)
  const ahead = secondSideAhead(file.theCase)
  if (!ahead) throw new Error('No second side is ahead.')
  const needs = needsOf(ahead.second, ahead.operation, file, owedRules.before.weightNotOlderThan.value)
  return Object.fromEntries(needs.map(({ name, state }) => [name, state]))
}

function owedBefore(entries: readonly Entry[]) {
  const { owed } = owedOf(fileOf(entries), procedures, { rules: owedRules })
  return owed
    .filter(({ operation, what }) => operation === 'operation-2' && /baseline|weight|consent/.test(what))
    .map(({ what, why }) => [what, why[0]?.code])
}

describe('a second side', () => {
  it('is none before it is decided, for a first ear, for one anaesthetic, and for an ear operated again', () => {
    const make = entryMaker()
    expect(secondSideAhead(fileOf(firstSide(make)).theCase)).toBeNull()
    const { file, operations } = fileWith(bothCut(make))
    expect(operations.map((one) => secondSideOf(one, operations, file.theCase))).toEqual([null, null])
    const again = fileWith([...firstSide(make), ...cutOf(make, 'LEFT', '2026-09-15T08:00:00.000Z', 'operation-2')])
    expect(again.operations.map((one) => secondSideOf(one, again.operations, again.file.theCase))).toEqual([null, null])
  })

  it('begins with the day on which it was decided, and is linked to the first', () => {
    const make = entryMaker()
    const entries = [...firstSide(make), chosen(make), booked(make, null)]
    const { file, operations, operation } = fileWith(entries)
    const second = operation && secondSideOf(operation, operations, file.theCase)
    expect(second).toMatchObject({ side: 'RIGHT', since: '2026-08-31T23:00:00.000Z', first: { id: 'operation-1' } })
    const plan = { plan: 'operate-later', because: 'Quiet now.', reviewOn: null } as const
    const planned = make({ kind: 'other-ear-plan', at: '2026-04-20T09:00:00.000Z', subject: right, body: plan })
    const later = fileOf([...firstSide(make), planned])
    expect(secondSideAhead(later.theCase)?.second.since).toBe('2026-03-04T09:00:00.000Z')
  })

  it('begins anew when the choice was taken back and made again', () => {
    const make = entryMaker()
    const [option] = choiceKind.example.options
    if (!option) throw new Error('The worked example chooses.')
    const declined = { ...choiceKind.example, options: [{ ...option, answer: 'declined' as const }] }
    const again = make({ kind: 'choice', at: '2027-01-10T10:00:00.000Z', subject: right })
    const taken = make({ kind: 'choice', at: '2026-10-01T10:00:00.000Z', subject: right, body: declined })
    const before = [...firstSide(make), chosen(make), taken]
    expect(secondSideAhead(fileOf(before).theCase)).toBeNull()
    expect(secondSideAhead(fileOf([...before, again]).theCase)?.second.since).toBe('2027-01-10T00:00:00.000Z')
  })

  it('takes nothing over: each thing of the first side is shown as older, and not used', () => {
    const make = entryMaker()
    const scan = make({ kind: 'imaging', at: '2026-02-20T09:00:00.000Z' })
    const entries = [...firstSide(make), scan, chosen(make)]
    expect(states(entries)).toEqual({
      choice: 'new',
      baseline: 'old',
      imaging: (scan.body as { RIGHT: unknown }).RIGHT === null ? 'missing' : 'old',
      estimate: 'old',
      consent: 'old',
      booking: 'missing',
      'planned-lines': 'missing',
      weight: 'old',
    })
  })

  it('is owed baseline, weight and consent anew, whatever the booking names', () => {
    const make = entryMaker()
    const first = firstSide(make)
    const old = first.find(({ kind }) => kind === 'agreement')?.id ?? null
    const wanted = [
      ['baseline-before-premedication', 'baseline-none'],
      ['consent-before-operation', 'agreement-before-second-side'],
      ['weight-before-operation', 'weight-not-today'],
    ]
    for (const named of [old, null]) {
      const entries = [...first, chosen(make), booked(make, named)]
      expect(owedBefore(entries).sort()).toEqual(wanted)
      const { file, operations, operation } = fileWith(entries)
      if (!operation) throw new Error('The right ear is booked.')
      expect(consentOf(operation, file, null).kind).toBe('none')
      const { owed } = owedOf(file, procedures, { rules: owedRules })
      const about = owed.filter((item) => item.operation === operation.id)
      const missing = missingBeforeOperation(operation, file, about, [], theatreRules)
      expect(missing.map(({ code }) => code)).toEqual(expect.arrayContaining(['consent', 'baseline', 'weight']))
      const setting = { theCase: file.theCase, operations, sides: [], missing, pauses: [], now: plannedFor }
      expect(gatesOf('premedication', operation, setting)).toEqual(['baseline', 'consent'])
      expect(gatesOf('incision', operation, setting)).toEqual(['consent'])
    }
  })

  it('does not take a look made after the first operation and before the decision', () => {
    const make = entryMaker()
    const between = make({ kind: 'baseline', at: '2026-06-04T09:00:00.000Z' })
    const entries = [...firstSide(make), between, chosen(make), booked(make, null)]
    expect(owedBefore(entries).map(([what]) => what)).toContain('baseline-before-premedication')
    // On the day of the decision, before it was written down, counts.
    const sameDay = make({ kind: 'baseline', at: '2026-09-01T08:00:00.000Z' })
    expect(owedBefore([...entries, sameDay]).map(([what]) => what)).not.toContain('baseline-before-premedication')
  })

  it('does not take the weight of a first side that was cut the day before', () => {
    const make = entryMaker()
    const next = '2026-03-05T06:30:00.000Z'
    const [booking] = cutOf(make, 'RIGHT', next, 'operation-2')
    const entries = [...firstSide(make), ...(booking ? [booking] : [])]
    expect(owedBefore(entries).map(([what]) => what)).toContain('weight-before-operation')
    const weighed = make({ kind: 'weight', at: '2026-03-05T06:00:00.000Z' })
    expect(owedBefore([...entries, weighed]).map(([what]) => what)).not.toContain('weight-before-operation')
  })

  it('is whole once all of it is new', () => {
    const make = entryMaker()
    const at = '2026-09-02T09:00:00.000Z'
    const edition = { ...accepted, edition: 2, answer: { ...accepted.answer, on: { ...accepted.answer.on, at } } }
    const plan: typeof both = { ...both, ears: [{ side: 'RIGHT', procedure: 'teca-lbo' }], ceiling: accepted.ceiling }
    const entries = [
      ...firstSide(make),
      chosen(make),
      booked(make, null),
      make({ kind: 'baseline', at }),
      make({ kind: 'estimate', at, body: edition }),
      make({
        kind: 'agreement',
        at: '2026-09-02T10:00:00.000Z',
        body: { ...agreement.example, plan, fingerprint: fingerprintOf(plan) },
      }),
      make({ kind: 'planned-line', at, subject: { kind: 'operation', animal: 'animal-1', operation: 'operation-2' } }),
    ]
    const early = make({ kind: 'weight', at })
    expect(states([...entries, early]).weight).toBe('not-yet')
    const weighed = make({ kind: 'weight', at: '2026-09-15T07:00:00.000Z' })
    const { imaging, ...rest } = states([...entries, early, weighed])
    expect([...new Set(Object.values(rest))]).toEqual(['new'])
    expect(owedBefore([...entries, weighed])).toEqual([])
  })

  it('keeps the talk from being signed on the estimate of the first side, and names both as missing', () => {
    const make = entryMaker()
    const entries = [...firstSide(make), chosen(make)]
    const file = fileOf(entries)
    const codes = missingInAgreement(file).map(({ code }) => code)
    expect(codes).toEqual(expect.arrayContaining(['agreement-missing', 'estimate-missing']))
    const talk = { ears: [], taught: {}, strokes: [], name: '' } as unknown as Parameters<typeof agreementIn>[0]
    const setting = { file, planned: {}, today: '2026-09-01' } as unknown as Parameters<typeof agreementIn>[1]
    const faults = (some: typeof setting) => agreementIn({ ...talk, ...blank }, some).faults.map(({ code }) => code)
    expect(faults(setting)).toContain('estimate-of-first-side')
    const edition = make({ kind: 'estimate', at: '2026-09-02T09:00:00.000Z', body: { ...accepted, edition: 2 } })
    const anew = faults({ ...setting, file: fileOf([...entries, edition]) })
    expect(anew).not.toContain('estimate-of-first-side')
    expect(anew).not.toContain('estimate-not-accepted')
  })

  it('says plainly how the first operation left the blink, and that nobody knows where nobody looked', () => {
    const make = entryMaker()
    const faceOf = (entries: readonly Entry[]) => {
      const [course] = nerveCoursesOf(fileOf(entries), { ...owedRules, counting: ownCounting })
      if (!course) throw new Error('The left ear was operated.')
      return firstFaceOf(course).kind
    }
    const look = (body: typeof normal) => checkOn(make, '2026-06-01T09:00:00.000Z', body)
    expect(faceOf(firstSide(make))).toBe('not-known')
    expect(faceOf([...firstSide(make), look(weak)])).toBe('not-normal')
    expect(faceOf([...firstSide(make), look(normal)])).toBe('normal')
    expect(faceOf([...firstSide(make), look({ ...normal, seenBy: 'owner-words' })])).toBe('not-known')
  })
})

const blank = {
  surgeon: null,
  explainedBy: null,
  consentBy: null,
  authority: null,
  authorised: { by: null, how: null, when: '', until: '', upTo: '', witness: null },
  soundMind: null,
  resuscitate: null,
  mayExtend: null,
  extension: '',
  photographs: null,
  given: null,
  witness: null,
  copy: null,
} as const
