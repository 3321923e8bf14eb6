import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { homePlanOf } from '#core/home/home-plan.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { findingsOfHome, flagsOfHome, onceEach } from './flag-home.ts'
import { boundHomeOf } from './home-confirmed.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
const zone = 'Europe/London'
type Medicine = BodyOf<'discharge'>['medicines'][number]
type Blink = BodyOf<'check'>['blink']

const gel: Partial<Medicine> = {
  drug: 'carbomer',
  label: 'Carbomer gel',
  form: 'eye-gel',
  strength: { value: '0.2', unit: '%' },
  each: '1',
  side: 'LEFT',
  times: ['07:00', '11:00', '15:00', '19:00', '23:00'],
}

/** A dog whose LEFT ear was operated on 1 March 2026 and that goes home on the next day. */
function course(
  medicines: readonly Partial<Medicine>[],
  rest: { readonly body?: Partial<BodyOf<'discharge'>>; readonly blink?: Blink; readonly right?: Blink } = {},
): { readonly make: ReturnType<typeof entryMaker>; readonly entries: Entry[] } {
  const make = entryMaker()
  const discharge = make({ kind: 'discharge', at: '2026-03-02T10:00:00.000Z' })
  const body = discharge.body as unknown as BodyOf<'discharge'>
  const look = (side: 'LEFT' | 'RIGHT', blink: Blink) => {
    const check = make({
      kind: 'check',
      at: '2026-03-02T08:00:00.000Z',
      subject: { kind: 'ear', animal: 'animal-1', side },
    })
    const bare = { ...(check.body as object), blink, tearTest: null, fluorescein: 'not-assessed' }
    return { ...check, body: bare } as Entry
  }
  const booking = make({ kind: 'booking' })
  const entries = [
    make({ kind: 'identity' }),
    make({
      kind: 'weight',
      body: { weight: { value: '10', unit: 'kg' }, typed: null, how: 'scale', bodyCondition: 5 },
    }),
    { ...booking, body: { ...(booking.body as object), side: 'LEFT' } } as Entry,
    make({
      kind: 'theatre-stamp',
      at: '2026-03-01T10:00:00.000Z',
      body: { checkpoint: 'incision', answer: 'done', detail: {}, text: null },
    }),
    look('LEFT', rest.blink ?? 'normal'),
    ...(rest.right ? [look('RIGHT', rest.right)] : []),
    {
      ...discharge,
      body: {
        ...body,
        collarUntil: '2026-03-14',
        nextVisit: '2026-03-13',
        ...rest.body,
        medicines: medicines.map((medicine) => ({
          ...body.medicines[0],
          firstDay: '2026-03-02',
          firstTime: '12:00',
          ...medicine,
        })),
      },
    } as Entry,
  ]
  return { make, entries }
}

const codes = (...wanted: Parameters<typeof course>) =>
  flagsOfHome(fold(course(...wanted).entries), zone, knowledge).map(({ code }) => code)

describe('a medicine for an eye', () => {
  it('is asked about when its side is neither operated nor found ill', () => {
    expect(codes([{ ...gel, side: 'RIGHT' }], { blink: 'weak' })).toEqual(['home-eye-other'])
    expect(codes([{ ...gel, side: 'RIGHT' }])).toEqual(['home-side-other'])
    expect(codes([gel], { blink: 'weak' })).toEqual([])
    expect(codes([{ ...gel, side: 'RIGHT' }], { right: 'weak' })).toEqual([])
  })

  it('is asked about when it names no side; the same for drops in an ear on the other side', () => {
    expect(codes([{ ...gel, side: null }])).toEqual(['home-side-missing'])
    const drops = { drug: 'gentamicin', label: 'Ear drops', form: 'liquid', side: 'RIGHT' } as const
    expect(codes([{ ...drops, strength: { value: '3', unit: 'mg/mL' }, each: '0.2' }])).toContain('home-side-other')
  })

  it('that does not blink is kept wet at home as in the ward, or a person says that less is meant', () => {
    expect(codes([gel], { blink: 'absent' })).toEqual(['home-eye-less'])
    expect(codes([], { blink: 'absent' })).toEqual(['home-eye-nothing'])
    const often = { ...gel, times: ['07:00', '09:00', '11:00', '13:00', '15:00', '17:00', '19:00', '21:00'] }
    const night: Partial<Medicine> = {
      ...gel,
      drug: 'paraffin-eye-ointment',
      label: 'Ointment',
      form: 'eye-ointment',
      times: ['23:00'],
    }
    expect(codes([often], { blink: 'absent' })).toEqual(['home-eye-less'])
    expect(codes([often, night], { blink: 'absent' })).toEqual([])
  })
})

describe('a medicine that nobody here knows', () => {
  const tablet = { strength: { value: '200', unit: 'mg/{tablet}' }, each: '1' } as const
  it('is said not to be checked, and a near name is not taken for it', () => {
    expect(codes([{ ...tablet, drug: 'Vitamin drops', label: 'Vitamin drops' }])).toEqual(['home-not-checked'])
    expect(codes([{ ...tablet, drug: 'Meloxicm', label: 'Meloxicm' }])).toEqual(['home-not-checked'])
  })

  it('is known by its class all the same: two NSAIDs, an NSAID beside a steroid, forbidden in the species', () => {
    const meloxicam = { strength: { value: '1', unit: 'mg/{tablet}' }, each: '1' } as const
    const ibuprofen = { ...tablet, drug: 'Ibuprofen 200 mg', label: 'Ibuprofen', times: ['08:00', '20:00'] }
    const found = codes([meloxicam, ibuprofen])
    expect(found).toEqual(expect.arrayContaining(['home-not-checked-named', 'two-nsaids', 'forbidden-for-species']))
    const steroid = { drug: 'prednisolone', strength: { value: '5', unit: 'mg/{tablet}' }, each: '1' } as const
    expect(codes([steroid, ibuprofen])).toContain('nsaid-with-steroid')
  })

  it('in tablets that cannot be cut so, or without a strength, is asked about', () => {
    const meloxicam = { strength: { value: '1', unit: 'mg/{tablet}' } } as const
    expect(codes([{ ...meloxicam, each: '0.33' }])).toEqual(['home-tablet-part'])
    expect(codes([{ ...meloxicam, each: '0.5' }])).toEqual([])
    expect(codes([{ strength: null, each: '1' }])).toEqual(['home-dose-not-checked'])
  })
})

describe('days that cannot be meant', () => {
  it('are named with their field', () => {
    const one = { strength: { value: '1', unit: 'mg/{tablet}' }, each: '1' } as const
    expect(codes([{ ...one, firstDay: '2027-03-02' }])).toEqual(['home-first-late'])
    expect(codes([{ ...one, firstDay: '2026-02-28' }])).toEqual(['home-first-before-operation'])
    expect(codes([], { body: { collarUntil: '2025-03-14' } })).toEqual(['home-collar-before'])
    expect(codes([], { body: { nextVisit: '2025-03-14' } })).toEqual(['home-visit-before'])
    expect(codes([], { body: { collarUntil: '2028-03-14', nextVisit: '2029-03-01' } })).toEqual([
      'home-collar-far',
      'home-visit-far',
    ])
  })
})

describe('what a person confirms', () => {
  const confirmed = (
    person: string,
    verdict: 'agrees' | 'nobody-available',
    medicines: readonly Partial<Medicine>[],
  ) => {
    const { make, entries } = course(medicines)
    const theCase = fold(entries)
    const plan = homePlanOf(theCase)
    if (!plan) throw new Error('It went home.')
    const findings = onceEach(findingsOfHome(theCase, plan, zone, knowledge))
    const check = make({
      kind: 'second-check',
      author: { kind: 'person', person },
      body: { of: [plan.discharge.header.id], verdict, text: 'Meant.', plan: boundHomeOf(theCase, plan, findings) },
    })
    const left = (more: readonly Entry[]) =>
      flagsOfHome(fold([...entries, check, ...more]), zone, knowledge).map(({ code }) => code)
    return { make, left }
  }
  const right = { ...gel, side: 'RIGHT' } as const

  it('no longer holds the page: another person, or the same where nobody else was there', () => {
    expect(confirmed('person-nurse', 'agrees', [right]).left([])).toEqual([])
    expect(confirmed('person-surgeon', 'agrees', [right]).left([])).toEqual(['home-side-other'])
    expect(confirmed('person-surgeon', 'nobody-available', [right]).left([])).toEqual([])
  })

  it('counts for what was found then, and never for a stop', () => {
    const { make, left } = confirmed('person-nurse', 'agrees', [right])
    const unknown = { ...right, drug: 'Vitamin drops', label: 'Vitamin drops', side: 'LEFT' }
    const example = make({ kind: 'medicine-change' }).body as unknown as BodyOf<'medicine-change'>
    const starts = [{ ...example.starts[0], ...unknown, firstDay: '2026-03-03' }] as Medicine[]
    const change = make({
      kind: 'medicine-change',
      at: '2026-03-03T10:00:00.000Z',
      body: { read: null, because: 'x', stops: [], starts },
    })
    expect(left([change])).toEqual(expect.arrayContaining(['home-side-other', 'home-not-checked']))
    const ibuprofen = { drug: 'ibuprofen', strength: { value: '200', unit: 'mg/{tablet}' }, each: '1' } as const
    expect(confirmed('person-nurse', 'agrees', [right, ibuprofen]).left([])).toContain('forbidden-for-species')
  })
})
