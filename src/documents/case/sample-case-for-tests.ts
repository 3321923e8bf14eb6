import type { CaseFile } from '#core/journal/clinic.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import type { PaperInput } from './paper-input.ts'

/** A clinic of two people and one household, around these entries. */
export function fileAround(entries: readonly Entry[], name = 'Invented Referrals'): CaseFile {
  return {
    clinicId: 'clinic-1',
    clinic: {
      name,
      address: ['1 Mill Lane', 'Nowhere'],
      phone: '01632 960001',
      outOfHoursPhone: '01632 960002',
      email: null,
      zone: 'Europe/London',
      language: 'en',
      decimalMark: '.',
      currency: 'GBP',
      closedWeekdays: [6, 7],
    },
    people: new Map([
      ['person-surgeon', { name: 'Ada Surgeon', role: 'surgeon', letters: null }],
      ['person-anaesthetist', { name: 'Ben Gas', role: 'anaesthetist', letters: null }],
      ['person-nurse', { name: 'Cleo Nurse', role: 'nurse', letters: null }],
    ]),
    contacts: new Map([
      ['contact-1', { kind: 'owner', name: 'Olive Owner', practice: null, phone: null, email: null, address: [] }],
      [
        'contact-vet-1',
        {
          kind: 'vet',
          name: 'Val Vet',
          practice: 'Village Vets',
          phone: null,
          email: null,
          address: ['2 High Street', 'Nowhere'],
        },
      ],
    ]),
    closedDays: [],
    stream: 'case:0001',
    theCase: fold(entries),
    house: fold([]),
  }
}

/** What a paper is made from, on 12 February 2026. */
export function inputFor(entries: readonly Entry[], more: Partial<PaperInput> = {}): PaperInput {
  return {
    file: fileAround(entries),
    on: { at: '2026-02-12T10:00:00.000Z', zone: 'Europe/London', precision: 'minute', by: 'person' },
    operation: null,
    owed: [],
    doses: null,
    ...more,
  }
}

/** The worked examples of the kinds as one short course, from identity to discharge. */
export function exampleEntries(): Entry[] {
  const make = entryMaker()
  const operation = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
  const identity = make({
    kind: 'identity',
    at: '2026-02-01T10:00:00.000Z',
    body: {
      name: 'Bramble',
      species: 'dog',
      breed: 'English Springer Spaniel',
      sex: 'female',
      neutered: 'yes',
      born: { at: '2018-05-01T00:00:00.000Z', zone: 'Europe/London', precision: 'month', by: 'person' },
      chip: '000000000000001',
      household: 'household-1',
      referringVet: 'contact-vet-1',
      flatFace: 'no',
      abcb1: 'unknown',
    },
  })
  const specimen = make({ kind: 'specimen', at: '2026-02-10T10:20:00.000Z' })
  return [
    identity,
    make({ kind: 'household', at: '2026-02-01T10:01:00.000Z' }),
    make({ kind: 'referral', at: '2026-02-01T10:02:00.000Z' }),
    make({ kind: 'weight', at: '2026-02-10T07:30:00.000Z' }),
    make({ kind: 'ear-findings', at: '2026-02-02T10:00:00.000Z' }),
    make({ kind: 'baseline', at: '2026-02-02T10:10:00.000Z' }),
    make({ kind: 'imaging', at: '2026-02-02T11:10:00.000Z' }),
    make({ kind: 'choice', at: '2026-02-02T12:00:00.000Z' }),
    make({ kind: 'agreement', at: '2026-02-02T12:30:00.000Z' }),
    make({ kind: 'booking', at: '2026-02-02T12:40:00.000Z' }),
    make({ kind: 'planned-line', at: '2026-02-10T07:45:00.000Z', subject: operation }),
    make({ kind: 'drug-given', at: '2026-02-10T09:30:00.000Z', subject: operation }),
    make({ kind: 'theatre-stamp', at: '2026-02-10T10:00:00.000Z', subject: operation }),
    make({ kind: 'blood-loss', at: '2026-02-10T10:50:00.000Z', subject: operation }),
    make({ kind: 'count', at: '2026-02-10T11:00:00.000Z', subject: operation }),
    specimen,
    make({ kind: 'operation-summary', at: '2026-02-10T11:10:00.000Z', subject: operation }),
    make({
      kind: 'check',
      at: '2026-02-11T09:00:00.000Z',
      subject: { kind: 'ear', animal: 'animal-1', side: 'LEFT' },
    }),
    make({
      kind: 'discharge',
      at: '2026-02-12T09:00:00.000Z',
      body: {
        medicines: [
          {
            drug: 'meloxicam',
            label: 'Meloxicam chewable tablet 1 mg',
            purpose: 'pain and swelling',
            form: 'tablet',
            strength: { value: '1', unit: 'mg/{tablet}' },
            each: '1',
            side: null,
            times: ['08:00'],
            firstDay: '2026-02-13',
            firstTime: '08:00',
            days: 7,
            withFood: 'yes',
            onDays: 'every-day',
            steps: [],
          },
          {
            drug: 'amoxicillin-clavulanate',
            label: 'Amoxicillin and clavulanic acid tablet 250 mg',
            purpose: 'infection',
            form: 'tablet',
            strength: { value: '250', unit: 'mg/{tablet}' },
            each: '0.5',
            side: null,
            times: ['08:00', '20:00'],
            firstDay: '2026-02-12',
            firstTime: '20:00',
            days: 7,
            withFood: 'yes',
            onDays: 'every-day',
            steps: [],
          },
          {
            drug: 'carbomer',
            label: 'Carbomer eye gel',
            purpose: 'keeping the eye wet',
            form: 'eye-gel',
            strength: null,
            each: '1',
            side: 'LEFT',
            times: ['08:00', '12:00', '16:00', '20:00'],
            firstDay: '2026-02-12',
            firstTime: '12:00',
            days: 14,
            withFood: 'either',
            onDays: 'every-day',
            steps: [],
          },
        ],
        collarUntil: '2026-02-24',
        sutures: 'to-come-out',
        food: 'Soft food for two weeks.',
        rest: 'Short walks on the lead; help on stairs while unsteady.',
        eyeCare: 'One drop of gel into the LEFT eye four times a day; wipe from the nose outwards.',
        nextVisit: '2026-02-23',
        taught: [
          { item: 'collar', answer: 'own-words' },
          { item: 'eye-care', answer: 'with-help' },
        ],
        taughtBy: 'person-nurse',
        carer: null,
      },
    }),
  ]
}
