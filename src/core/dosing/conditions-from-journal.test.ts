import { describe, expect, it } from 'vitest'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import { baseline } from '#core/journal/kinds/baseline.ts'
import { bloodLoss } from '#core/journal/kinds/blood-loss.ts'
import { bloodTest } from '#core/journal/kinds/blood-test.ts'
import { booking } from '#core/journal/kinds/booking.ts'
import { check } from '#core/journal/kinds/check.ts'
import { earFindings } from '#core/journal/kinds/ear-findings.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { operationSummary } from '#core/journal/kinds/operation-summary.ts'
import { dosedAnimalOf } from './from-journal.ts'

const at = '2026-03-01T12:00:00.000Z'

/** What the case says of a springer spaniel of 10 kg at noon. */
function words(make: (one: ReturnType<typeof entryMaker>) => readonly Entry[], breed = identity.example.breed) {
  const one = entryMaker()
  const who = one({ kind: 'identity', body: { ...identity.example, breed } })
  const scale = one({
    kind: 'weight',
    body: { weight: { value: '10', unit: 'kg' }, typed: null, how: 'scale', bodyCondition: null },
  })
  return dosedAnimalOf(fold([who, scale, ...make(one)]), at, dosingRules)?.conditions
}

const creatinine = (printed: string, flag: string | null, range: string | null) => ({
  kind: 'blood-test' as const,
  body: { ...bloodTest.example, results: [{ analyte: 'Creatinine', printed, unit: 'umol/L', flag, range }] },
})

describe('what a case says of an animal', () => {
  it('is nothing when nothing was found', () => {
    expect(words(() => [])).toEqual([])
  })

  it('is a raised creatinine by its flag or its printed range, until a newer one is normal', () => {
    expect(words((make) => [make(creatinine('180', 'H', null))])).toEqual(['raised-creatinine'])
    expect(words((make) => [make(creatinine('180', null, '44 - 159'))])).toEqual(['raised-creatinine'])
    expect(words((make) => [make(creatinine('180', 'H', null)), make(creatinine('90', null, '44 - 159'))])).toEqual([])
    // Without a flag and a range nobody here knows what is normal for that machine.
    expect(words((make) => [make(creatinine('180', null, null))])).toEqual([])
  })

  // 10 kg hold 900 mL at 90 mL/kg; the mark at which loss is replaced is 15 %, 135 mL.
  it('is a loss of blood from the mark on at which it is replaced, the upper end where lavage was not measured', () => {
    const lost = (jar: string, lavageInJar: string | null) => ({
      kind: 'blood-loss' as const,
      body: {
        ...bloodLoss.example,
        jar: { value: jar, unit: 'mL' as const },
        lavageIn: { value: '100', unit: 'mL' as const },
        lavageInJar: lavageInJar === null ? null : { value: lavageInJar, unit: 'mL' as const },
        swabs: [],
      },
    })
    expect(words((make) => [make(lost('150', '100'))])).toEqual([])
    expect(words((make) => [make(lost('150', null))])).toEqual(['blood-loss'])
    expect(words((make) => [make(lost('300', '100'))])).toEqual(['blood-loss'])
  })

  it('is an open drum when either was ruptured or not to be seen', () => {
    const drum = (seen: 'intact' | 'ruptured' | 'could-not-see' | 'not-assessed') => ({
      kind: 'ear-findings' as const,
      body: { ...earFindings.example, drum: seen },
    })
    expect(words((make) => [make(drum('could-not-see'))])).toEqual(['open-drum'])
    expect(words((make) => [make(drum('ruptured')), make(drum('not-assessed'))])).toEqual(['open-drum'])
    expect(words((make) => [make(drum('ruptured')), make(drum('intact'))])).toEqual([])
  })

  it('is whole drums only when both were seen whole last', () => {
    const drum = (side: 'LEFT' | 'RIGHT', seen: 'intact' | 'not-assessed') => ({
      kind: 'ear-findings' as const,
      subject: { kind: 'ear' as const, animal: 'animal-1', side },
      body: { ...earFindings.example, drum: seen },
    })
    expect(words((make) => [make(drum('LEFT', 'intact'))])).toEqual([])
    expect(words((make) => [make(drum('LEFT', 'intact')), make(drum('RIGHT', 'not-assessed'))])).toEqual([])
    expect(words((make) => [make(drum('LEFT', 'intact')), make(drum('RIGHT', 'intact'))])).toEqual(['intact-drums'])
  })

  it('is an open bulla once an operation that opens it is booked or done', () => {
    const booked = (procedure: (typeof booking.example)['procedure']) => ({
      kind: 'booking' as const,
      body: { ...booking.example, procedure },
    })
    const done = { kind: 'operation-summary' as const, body: operationSummary.example }
    expect(words((make) => [make(booked('teca-lbo'))])).toEqual(['open-bulla'])
    expect(words((make) => [make(booked('ventral-bulla-osteotomy'))])).toEqual(['open-bulla'])
    expect(words((make) => [make(booked('lateral-wall-resection'))])).toEqual([])
    expect(words((make) => [make(done)])).toEqual(['open-bulla'])
  })

  it('is an eye without a blink, or a dry one, as last assessed on either side', () => {
    const face = (more: Partial<(typeof baseline.example)['LEFT']>) => ({
      kind: 'baseline' as const,
      body: { ...baseline.example, RIGHT: { ...baseline.example.RIGHT, ...more } },
    })
    expect(words((make) => [make(face({ blink: 'absent' }))])).toEqual(['no-blink'])
    expect(words((make) => [make(face({ tearTest: { value: '6', unit: 'mm/min' } }))])).toEqual(['dry-eye'])
    const later = { kind: 'check' as const, body: { ...check.example, blink: 'absent' as const } }
    expect(words((make) => [make(face({})), make(later)])).toEqual(['no-blink'])
  })

  // WSU list: Collie, Australian Shepherd, Sheltie, German Shepherd; nobody tested this one.
  it('is a carrier of ABCB1 in a breed in which it is common, but no bearded or border collie', () => {
    expect(words(() => [], 'Rough Collie')).toEqual(['abcb1-carrier'])
    expect(words(() => [], 'Border Collie')).toEqual([])
  })
})
