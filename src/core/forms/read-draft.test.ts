import { describe, expect, it } from 'vitest'
import { forms } from '#content/forms/index.ts'
import { fingerprintOf } from '#core/agreement/fingerprint.ts'
import { type BodyOf, type KindName, kindNamed } from '#core/journal/fold.ts'
import { discharge as dischargeKind } from '#core/journal/kinds/discharge.ts'
import { type Draft, withDraftAt } from './draft.ts'
import { draftOf } from './draft-of.ts'
import { emptyDraft } from './empty-draft.ts'
import { type Form, formOf } from './form.ts'
import { readDraft, stillRefused } from './read-draft.ts'
import type { Place } from './refusal.ts'

const place: Place = { zone: 'Europe/London', decimalMark: '.', currency: 'GBP' }

function formFor<Name extends KindName>(name: Name): Form<Name> {
  const arrangement = forms.find(({ kind }) => kind === name)
  if (!arrangement) throw new Error(name)
  return formOf(arrangement) as unknown as Form<Name>
}

function exampleDraft(name: KindName, where: Place = place): Draft {
  return draftOf(formFor(name), kindNamed(name)?.example as BodyOf<KindName>, where)
}

/** The refusals of the example after one field of it was typed over: `path: because`. */
function refusalsAfter(name: KindName, path: string, typed: Draft, where: Place = place): string[] {
  const read = readDraft(formFor(name), withDraftAt(exampleDraft(name, where), path, typed), where)
  return read.kind === 'answer' ? [] : read.refusal.map((refusal) => `${refusal.path}: ${refusal.because}`)
}

function bodyAfter(name: KindName, path: string, typed: Draft, where: Place = place): Record<string, unknown> {
  const read = readDraft(formFor(name), withDraftAt(exampleDraft(name, where), path, typed), where)
  if (read.kind === 'refusal') throw new Error(JSON.stringify(read.refusal))
  return read.answer as Record<string, unknown>
}

describe('a draft', () => {
  it('is refused at every open choice: nothing is answered for a person', () => {
    const read = readDraft(formFor('ear-findings'), emptyDraft(formFor('ear-findings')), place)
    const refused = read.kind === 'refusal' ? read.refusal.map(({ path, because }) => `${path}: ${because}`) : []
    expect(refused).toEqual([
      'examined: not-chosen',
      'flapCarriage: not-chosen',
      'canalFeel: not-chosen',
      'painOnPressing: not-chosen',
      'painOnJawOpening: not-chosen',
      'swelling: not-chosen',
      'drainingTract: not-chosen',
      'discharge: not-chosen',
      'stenosis: not-chosen',
      'drum: not-chosen',
      'mass: not-chosen',
      'otis3.erythema: not-chosen',
      'otis3.swelling: not-chosen',
      'otis3.erosion: not-chosen',
      'otis3.exudate: not-chosen',
    ])
  })

  it('takes "not assessed" only when it was chosen', () => {
    expect(refusalsAfter('baseline', 'LEFT.tearTest', '')).toEqual(['LEFT.tearTest: quantity-empty'])
    expect(bodyAfter('baseline', 'LEFT.tearTest', null).LEFT).toMatchObject({ tearTest: null })
    expect(refusalsAfter('operation-summary', 'complications', '')).toEqual(['complications: nothing-chosen'])
    expect(bodyAfter('operation-summary', 'complications', null).complications).toEqual([])
  })

  it('asks for the place of a mass only when there is one, and never drops one that was given', () => {
    expect(bodyAfter('ear-findings', 'massPlace', '').massPlace).toBe('not-assessed')
    expect(
      refusalsAfter(
        'ear-findings',
        '',
        withDraftAt(withDraftAt(exampleDraft('ear-findings'), 'mass', 'yes'), 'massPlace', ''),
      ),
    ).toEqual(['massPlace: not-chosen'])
    expect(bodyAfter('ear-findings', 'massPlace', 'bulla').massPlace).toBe('bulla')
  })

  it('keeps what was typed when it was pounds, and the kilograms exactly (1 lb = 0.45359237 kg, by definition)', () => {
    expect(bodyAfter('weight', 'weight', '27 lb')).toMatchObject({
      weight: { value: '12.24699399', unit: 'kg' },
      typed: { value: '27', unit: '[lb_av]' },
    })
  })

  it('never guesses a unit where two are possible, and takes the number alone where one stands beside the box', () => {
    expect(refusalsAfter('weight', 'weight', '12.4')).toEqual(['weight: quantity-no-unit'])
    expect(refusalsAfter('drug-given', 'amount', '8')).toEqual(['amount: quantity-no-unit'])
    expect(bodyAfter('blood-loss', 'jar', '75').jar).toEqual({ value: '75', unit: 'mL' })
    expect(refusalsAfter('blood-loss', 'jar', '75 g')).toEqual(['jar: quantity-wrong-unit'])
    expect(refusalsAfter('blood-loss', 'jar', '70-75')).toEqual(['jar: quantity-range'])
    expect(refusalsAfter('drug-given', 'amount', '8 L')).toEqual(['amount: quantity-wrong-unit'])
  })

  it('lets what is measured settle the unit of a row', () => {
    const values = (what: string, value: string) => [{ what, value, method: '', artefact: false }]
    expect(bodyAfter('observation', 'values', values('temperature', '38.2')).values).toMatchObject([
      { value: { value: '38.2', unit: 'Cel' } },
    ])
    expect(bodyAfter('observation', 'values', values('mean', '74 mmHg')).values).toMatchObject([
      { value: { value: '74', unit: 'mm[Hg]' } },
    ])
    expect(refusalsAfter('observation', 'values', values('', '74'))).toEqual([
      'values.0.what: not-chosen',
      'values.0.value: unit-open',
    ])
  })

  it('reads decimals as the place writes them', () => {
    const lisbon = { ...place, decimalMark: ',' } as const
    expect(bodyAfter('weight', 'weight', '12,4 kg', lisbon).weight).toEqual({ value: '12.4', unit: 'kg' })
    expect(refusalsAfter('weight', 'weight', '12,4 kg')).toEqual(['weight: quantity-other-decimal-mark'])
    expect(bodyAfter('agreement', 'plan.ceiling', '3400,50', lisbon).plan).toMatchObject({
      ceiling: { amount: '3400.50', currency: 'GBP' },
    })
    expect(refusalsAfter('agreement', 'plan.ceiling', '3,400')).toEqual(['plan.ceiling: not-money'])
    expect(refusalsAfter('agreement', 'plan.ceiling', '3400', { ...place, currency: null })).toContain(
      'plan.ceiling: no-currency',
    )
  })

  it('keeps a coarse date coarse and refuses one that can be two days', () => {
    expect(bodyAfter('history-item', 'from', 'March 2024').from).toMatchObject({ precision: 'month' })
    expect(bodyAfter('history-item', 'from', '').from).toBeNull()
    expect(refusalsAfter('history-item', 'from', '05/03/2024')).toEqual(['from: day-or-month-first'])
    expect(refusalsAfter('discharge', 'nextVisit', 'March 2026')).toEqual(['nextVisit: not-a-day'])
    expect(refusalsAfter('booking', 'plannedFor', '29 March 2026, 01:30')).toEqual(['plannedFor: no-such-local-time'])
  })

  it('wants every red flag of a new call answered, and leaves those of an amended one as they were', () => {
    const empty = readDraft(formFor('referral'), emptyDraft(formFor('referral')), place)
    const rows = empty.kind === 'refusal' ? empty.refusal.filter(({ because }) => because === 'row-unanswered') : []
    expect(rows).toHaveLength(9)
    expect(refusalsAfter('referral', 'because', 'Painful.')).toEqual([])
    expect(refusalsAfter('referral', 'signs.rows.head-tilt', 'yes')).toHaveLength(6)
  })

  it('says what the schema refuses at the field a person can change', () => {
    expect(refusalsAfter('identity', 'chip', '12345')).toEqual(['chip: does-not-fit'])
    expect(refusalsAfter('note', 'text', 'x'.repeat(10_001))).toEqual(['text: too-long'])
    expect(refusalsAfter('weight', 'bodyCondition', '10')).toEqual(['bodyCondition: does-not-fit'])
    expect(refusalsAfter('count', 'items.0.found', '-1')).toEqual(['items.0.found: not-a-whole-number'])
  })

  it('says of a step of a medicine that begins on a day it cannot begin on which day would be right', () => {
    const step = (fromDay: string) => {
      const [one] = dischargeKind.example.medicines
      const steps = [{ fromDay, each: '0.5', times: ['08:00'], onDays: 'every-day' as const }]
      const body = { ...dischargeKind.example, medicines: [{ ...one, steps }] } as BodyOf<'discharge'>
      const read = readDraft(formFor('discharge'), draftOf(formFor('discharge'), body, place), place)
      return read.kind === 'refusal' ? read.refusal : []
    }
    const path = 'medicines.0.steps.0.fromDay'
    expect(step('2026-02-15')).toEqual([])
    expect(step('2026-12-12')).toMatchObject([
      { path, because: 'step-too-late', about: { given: '12 December 2026', day: '18 February 2026' } },
    ])
    expect(step('2026-02-12')).toMatchObject([{ path, because: 'step-too-early', about: { day: '12 February 2026' } }])
  })

  it('marks a changed plan anew and leaves the mark of an unchanged one as it is on file', () => {
    const kept = bodyAfter('agreement', 'resuscitate', 'no') as BodyOf<'agreement'>
    expect(kept.fingerprint).toBe('0'.repeat(64))
    const changed = bodyAfter('agreement', 'plan.language', 'pt') as BodyOf<'agreement'>
    expect(changed.fingerprint).toBe(fingerprintOf(changed.plan))
  })

  it('reads a subject by its kind and says which part is missing', () => {
    expect(bodyAfter('refile', 'toSubject', { kind: 'animal', animal: 'animal-7' }).toSubject).toEqual({
      kind: 'animal',
      animal: 'animal-7',
    })
    expect(refusalsAfter('refile', 'toSubject', { kind: 'ear', animal: 'animal-7' })).toEqual([
      'toSubject.side: not-written',
    ])
  })

  it('stops naming a field once it can be read, and names no new one before it is asked again', () => {
    const form = formFor('weight')
    const read = readDraft(form, { weight: '12.4', how: '', bodyCondition: '5' }, place)
    const refusals = read.kind === 'refusal' ? read.refusal : []
    expect(refusals.map(({ path }) => path)).toEqual(['weight', 'how'])
    const typedOn = { weight: '12.4 kg', how: '', bodyCondition: '' }
    expect(stillRefused(refusals, form, typedOn, place).map(({ path }) => path)).toEqual(['how'])
    expect(stillRefused(refusals, form, { ...typedOn, how: 'scale', bodyCondition: null }, place)).toEqual([])
    expect(stillRefused([], form, typedOn, place)).toEqual([])
  })

  it('survives a draft of another program: missing and foreign keys are unanswered, not a crash', () => {
    for (const { kind } of forms) {
      for (const foreign of [{}, null, 'text', [1, 2], { LEFT: 3, values: 'x', plan: [], signs: { rows: 4 } }]) {
        expect(readDraft(formFor(kind), foreign as Draft, place).kind, kind).toBe('refusal')
      }
    }
  })
})
