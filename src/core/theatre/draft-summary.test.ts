import { describe, expect, it } from 'vitest'
import { eyeAfterNerve } from '#content/follow-up/eye-after-nerve.ts'
import { procedures } from '#content/procedures/index.ts'
import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import { entryMaker, type WantedEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { check } from '#core/journal/kinds/check.ts'
import { choice } from '#core/journal/kinds/choice.ts'
import { drugGiven } from '#core/journal/kinds/drug-given.ts'
import { plannedLine } from '#core/journal/kinds/planned-line.ts'
import { specimenResult } from '#core/journal/kinds/specimen-result.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { draftSummary, type SummaryDraft } from './draft-summary.ts'

const subject = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
const facts = { swabs: bloodInSwabs, marks: reportInEnglish, eyeAfterNerve }

/** A plan that says nothing of how its dose is given. */
const nothingSaid: NonNullable<BodyOf<'planned-line'>['how']> = {
  formulation: null,
  over: null,
  container: null,
  loading: null,
  tablet: null,
  every: null,
  days: null,
  mark: null,
  xylitolFree: null,
  set: null,
  mixed: null,
}

function theatre() {
  const make = entryMaker()
  const booking = (more: Partial<BodyOf<'booking'>> = {}, of: WantedEntry<'booking'> = {}) =>
    make({
      kind: 'booking',
      subject,
      at: '2026-02-02T12:40:00.000Z',
      body: {
        side: 'LEFT',
        procedure: 'teca-lbo',
        agreement: null,
        plannedFor: { at: '2026-02-10T09:00:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' },
        surgeon: 'person-surgeon',
        anaesthetist: null,
        ...more,
      },
      ...of,
    })
  const stamp = (checkpoint: string, at: string, more: Partial<BodyOf<'theatre-stamp'>> = {}) =>
    make({
      kind: 'theatre-stamp',
      subject,
      at: `2026-02-10T${at}:00.000Z`,
      body: { checkpoint, answer: 'done', detail: {}, text: null, ...more },
    })
  return { make, booking, stamp }
}

function draftOf(entries: readonly Entry[]): SummaryDraft {
  const file = { theCase: fold(entries) }
  const operation = operationsOf(file).find(({ id }) => id === 'operation-1')
  if (!operation) throw new Error('No operation.')
  return draftSummary(file, operation, procedureNamed(operation.procedure, procedures), facts)
}

const kinds = (draft: SummaryDraft) => draft.findings.map(({ kind }) => kind)

describe('the summary drafted from the entries', () => {
  it('says nothing that no entry says', () => {
    const { booking } = theatre()
    expect(draftOf([booking()])).toEqual({
      side: 'LEFT',
      procedure: 'teca-lbo',
      surgeon: 'person-surgeon',
      // Nobody was named, which is not "none".
      anaesthetist: null,
      incisionAt: null,
      closedAt: null,
      indication: null,
      findings: [],
      drain: null,
      plan: [],
      unsettled: [],
    })
  })

  it('takes both moments from their stamps alone, and none from one that was not done', () => {
    const { booking, stamp } = theatre()
    const draft = draftOf([
      booking(),
      stamp('incision', '09:40'),
      stamp('closed', '11:05', { answer: 'not-done', text: 'Left open.' }),
    ])
    expect(draft.incisionAt?.at).toBe('2026-02-10T09:40:00.000Z')
    expect(draft.closedAt).toBeNull()
    expect(kinds(draft)).toEqual([])
  })

  it('says each sentence from a named stamp, in the order of the operation whenever it was tapped', () => {
    const { booking, stamp } = theatre()
    const bulla = stamp('k6-bulla', '10:00', { detail: { tool: 'burr' } })
    const nerve = stamp('k3-facial-nerve', '10:20', { detail: { nerve: 'seen', state: 'free' }, text: 'Thin.' })
    const lining = stamp('k5-meatus-lining', '10:30', { answer: 'not-done', text: 'It was gone.' })
    expect(draftOf([booking(), bulla, nerve, lining]).findings).toEqual([
      { kind: 'stamp', from: nerve.id, sentences: ['The facial nerve was seen.', 'It lay free.', 'Thin.'] },
      {
        kind: 'stamp',
        from: lining.id,
        sentences: ['The lining of the bony meatus was not taken out: It was gone.'],
      },
      { kind: 'stamp', from: bulla.id, sentences: ['The bulla was opened from the side with a burr.'] },
    ])
  })

  it('keeps a stamp of no checkpoint, and neither a mark of the clock nor the label of a pot', () => {
    const { booking, stamp } = theatre()
    const free = stamp('polyp', '10:10', { text: 'A polyp on a stalk.' })
    const draft = draftOf([booking(), stamp('tube-out', '11:20'), stamp('labelled-0190', '10:05'), free])
    expect(draft.findings.map((one) => ('from' in one ? one.from : one.kind))).toEqual([free.id])
  })

  it('drafts nothing where two stamps stand side by side, and names it', () => {
    const { booking, stamp } = theatre()
    const draft = draftOf([
      booking(),
      stamp('incision', '09:40'),
      stamp('incision', '09:52'),
      stamp('k3-facial-nerve', '10:00', { detail: { nerve: 'seen' } }),
      stamp('k3-facial-nerve', '10:01', { detail: { nerve: 'not-found' } }),
    ])
    expect([draft.incisionAt, draft.findings, draft.plan]).toEqual([null, [], []])
    expect(draft.unsettled).toEqual(['incision', 'k3-facial-nerve'])
  })

  it('says of the drain only what its checkpoint answers', () => {
    const { booking, stamp } = theatre()
    const drain = (detail: Record<string, string>, answer: 'done' | 'not-done' = 'done') =>
      draftOf([booking(), stamp('k12-drain', '10:50', { detail, answer, text: null })]).drain
    expect(drain({ drain: 'own-hole' })).toBe(true)
    expect(drain({ drain: 'none' })).toBe(false)
    // That it was decided does not say how; an answer nobody knows says nothing either.
    expect(drain({})).toBeNull()
    expect(drain({ drain: 'perhaps' })).toBeNull()
    expect(drain({ drain: 'own-hole' }, 'not-done')).toBeNull()
  })

  it('names no side that is in doubt, and no surgeon of two bookings that disagree', () => {
    const { make, booking } = theatre()
    const referral = make({ kind: 'choice', subject: { kind: 'ear', animal: 'animal-1', side: 'RIGHT' } })
    expect(draftOf([booking(), referral]).side).toBeNull()
    const two = draftOf([booking(), booking({ surgeon: 'person-other' })])
    expect([two.surgeon, two.side]).toEqual([null, 'LEFT'])
  })

  it('takes the indication from the choice of this operation for this ear before it, in its own words', () => {
    const { make, booking } = theatre()
    const left = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const
    const chosen = make({ kind: 'choice', subject: left, at: '2026-02-01T10:00:00.000Z' })
    expect(draftOf([booking(), chosen]).indication).toBe(choice.example.options[0]?.because)
    const later = make({ kind: 'choice', subject: left, at: '2026-03-01T10:00:00.000Z' })
    expect(draftOf([booking(), later]).indication).toBeNull()
    const declined = make({
      kind: 'choice',
      subject: left,
      at: '2026-02-01T10:00:00.000Z',
      body: { ...choice.example, options: [{ option: 'teca-lbo', answer: 'declined', because: 'Not now.' }] },
    })
    expect(draftOf([booking(), declined]).indication).toBeNull()
  })

  it('awaits what has no final result, and asks for the eye where the nerve was not free', () => {
    const { make, booking, stamp } = theatre()
    const pot = make({ kind: 'specimen', at: '2026-02-10T10:20:00.000Z' })
    const result = (status: 'preliminary' | 'final') =>
      make({
        kind: 'specimen-result',
        at: '2026-02-14T10:00:00.000Z',
        body: { ...specimenResult.example, specimen: pot.id, status },
      })
    const nerve = (detail: Record<string, string>) => stamp('k3-facial-nerve', '10:00', { detail })
    const plan = (...more: Entry[]) => draftOf([booking(), ...more]).plan.map(({ kind, from }) => [kind, from])
    expect(plan(pot)).toEqual([['awaited', pot.id]])
    expect(plan(pot, result('preliminary'))).toEqual([['awaited', pot.id]])
    expect(plan(pot, result('final'))).toEqual([])
    expect(plan(nerve({ nerve: 'seen', state: 'free', held: 'not-held' }))).toEqual([])
    const stuck = nerve({ nerve: 'seen', state: 'stuck' })
    expect(draftOf([booking(), stuck]).plan).toEqual([
      { kind: 'eye', from: stuck.id, sentences: ['It was stuck to the canal and freed.'] },
    ])
    const blink = make({
      kind: 'check',
      subject: { kind: 'ear', animal: 'animal-1', side: 'LEFT' },
      at: '2026-02-10T15:00:00.000Z',
      body: { ...check.example, blink: 'normal' },
    })
    expect(plan(stuck, blink)).toEqual([])
  })

  it('carries on the doses whose plan names how often, with when they were last given', () => {
    const { make, booking } = theatre()
    const line = (name: string, how: BodyOf<'planned-line'>['how']) =>
      make({ kind: 'planned-line', subject, body: { ...plannedLine.example, line: name, how } })
    const pain = line('pain', { ...nothingSaid, every: { value: '6', unit: 'h' } })
    const given = make({
      kind: 'drug-given',
      subject,
      at: '2026-02-10T11:00:00.000Z',
      body: { ...drugGiven.example, line: 'pain' },
    })
    const [dose, ...others] = draftOf([booking(), line('once', null), pain, given]).plan
    expect(dose).toMatchObject({ kind: 'dose', from: pain.id, lastAt: '2026-02-10T11:00:00.000Z' })
    expect(others).toEqual([])
  })

  it('adds the times the nerve was held only once each has an end', () => {
    const { booking, stamp } = theatre()
    const once = [stamp('retraction-on-1', '10:00'), stamp('retraction-off-1', '10:04')]
    expect(draftOf([booking(), ...once]).findings).toEqual([{ kind: 'retraction', times: 1, minutes: 4 }])
    expect(draftOf([booking(), ...once, stamp('retraction-on-2', '10:10')]).findings).toEqual([])
  })

  it('says of both ears under one anaesthetic only once both were cut', () => {
    const { make, booking, stamp } = theatre()
    const other = { kind: 'operation', animal: 'animal-1', operation: 'operation-2' } as const
    const right = booking(
      {
        side: 'RIGHT',
        plannedFor: { at: '2026-02-10T11:00:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' },
      },
      { subject: other },
    )
    const first = [booking(), right, stamp('incision', '09:10')]
    expect(kinds(draftOf(first))).toEqual([])
    const cut = make({
      kind: 'theatre-stamp',
      subject: other,
      at: '2026-02-10T11:10:00.000Z',
      body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
    })
    expect(draftOf([...first, cut]).findings).toEqual([{ kind: 'both-ears', which: 'first', other: 'RIGHT' }])
  })
})
