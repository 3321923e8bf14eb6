import type { Side } from '#core/animal/species.ts'
import type { Subject } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { Chart } from '../chart.ts'
import { demoClinic, staff, zone } from '../practice.ts'

/** An animal of the living practice with the subjects its entries are about. */
export type Living = {
  readonly chart: Chart
  readonly animal: Subject
  readonly operation: Subject
  readonly operationId: string
  readonly owner: string
  readonly ear: (side: Side) => Subject
}

export function living(name: string, owner: string): Living {
  const animal = `animal-${name}`
  const operationId = `operation-${name}`
  return {
    chart: new Chart(demoClinic, `case:${name}`, zone),
    animal: { kind: 'animal', animal },
    operation: { kind: 'operation', animal, operation: operationId },
    operationId,
    owner,
    ear: (side) => ({ kind: 'ear', animal, side }),
  }
}

type Known = Pick<BodyOf<'identity'>, 'name' | 'species' | 'breed' | 'sex' | 'born'> & Partial<BodyOf<'identity'>>
type Called = Pick<BodyOf<'referral'>, 'reportedSide' | 'complaint' | 'signs' | 'urgency' | 'because'> &
  Partial<BodyOf<'referral'>>

/** The first call: household, animal and what was said, by the desk within a few minutes. */
export function firstCall(one: Living, day: string, hour: string, known: Known, called: Called): void {
  const { chart, animal, owner } = one
  const household = `household-${owner.replace('contact-', '')}`
  const at = (minute: string) => `${day} ${hour}:${minute}`
  chart.write(
    'household',
    { at: at('02'), by: staff.moretti, subject: { kind: 'household', household } },
    {
      contacts: [{ contact: owner, roles: ['owner', 'nurses-at-home', 'pays'], mayConsent: true }],
      language: 'en',
      otherAnimals: null,
    },
  )
  chart.write(
    'identity',
    { at: at('04'), by: staff.moretti, subject: animal },
    {
      neutered: 'yes',
      chip: null,
      household,
      referringVet: 'contact-oyelaran',
      flatFace: 'no',
      abcb1: 'unknown',
      ...known,
    },
  )
  chart.write(
    'referral',
    { at: at('09'), by: staff.moretti, subject: animal },
    {
      caller: 'referring-vet',
      contact: 'contact-oyelaran',
      daysOfSigns: null,
      drugAllergy: { answer: 'no', what: null },
      mayFetchRecords: 'yes',
      ...called,
    },
  )
}

export function weigh(one: Living, at: string, kilograms: string, bodyCondition: number | null = 5): string {
  return one.chart.write(
    'weight',
    { at, by: staff.lindqvist, subject: one.animal },
    { weight: { value: kilograms, unit: 'kg' }, typed: null, how: 'scale', bodyCondition },
  )
}

/** One ear examined awake; what nobody says was looked for and not found. */
export function find(one: Living, side: Side, at: string, found: Partial<BodyOf<'ear-findings'>>): void {
  one.chart.write(
    'ear-findings',
    { at, by: staff.holm, subject: one.ear(side) },
    {
      examined: 'awake',
      canalFeel: 'soft',
      painOnPressing: 'no',
      painOnJawOpening: 'no',
      swelling: 'no',
      drainingTract: 'no',
      discharge: 'none',
      stenosis: 'none',
      drum: 'intact',
      mass: 'no',
      massPlace: 'not-assessed',
      massSize: 'not-assessed',
      flapCarriage: 'drop',
      otis3: { erythema: 0, swelling: 0, erosion: 0, exudate: 0 },
      text: null,
      ...found,
    },
  )
}

type Face = BodyOf<'baseline'>['LEFT']

/** Face, eye and balance before any sedative, all normal. */
export function normalBaseline(one: Living, at: string, tears: { readonly LEFT: string; readonly RIGHT: string }) {
  const face = (value: string): Face => ({
    blink: 'normal',
    lipOrEarDroop: 'no',
    nostril: 'moist',
    pupil: 'normal',
    thirdEyelidUp: 'no',
    tearTest: { value, unit: 'mm/min' },
    fluorescein: 'negative',
  })
  one.chart.write(
    'baseline',
    { at, by: staff.holm, subject: one.animal },
    {
      beforeSedation: true,
      drugsOnBoard: [],
      LEFT: face(tears.LEFT),
      RIGHT: face(tears.RIGHT),
      headTilt: 'none',
      nystagmus: 'no',
      unsteady: 'no',
      gag: 'present',
      hears: 'not-assessed',
    },
  )
}
