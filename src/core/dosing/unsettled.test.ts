import { Temporal } from 'temporal-polyfill'
import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { quantity } from '#core/units/quantity.ts'
import { doseLines } from './dose-lines.ts'
import { dosedAnimalOf, givenOf } from './from-journal.ts'
import type { Given, PlannedLine } from './request.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
const nsaid: PlannedLine = {
  id: 'nsaid',
  drug: 'carprofen',
  use: 'nsaid',
  route: 'SC',
  qualifier: 'once a day',
  dose: quantity('4.4', 'mg/kg'),
  stock: quantity('50', 'mg/mL'),
}
const opioid: PlannedLine = {
  id: 'opioid',
  drug: 'methadone',
  use: 'analgesia_bolus',
  route: 'IM',
  dose: quantity('0.2', 'mg/kg'),
  stock: quantity('10', 'mg/mL'),
}

const at = '2026-11-25T09:00:00.000Z'

/** A dog of 12 kg with one medicine in its history, asked about on 25 November 2026. */
function codesAfter(medicine: Partial<BodyOf<'medicine-before'>>, line = nsaid) {
  const make = entryMaker()
  const before = make({ kind: 'medicine-before' })
  const identity = make({ kind: 'identity' })
  const theCase = fold([
    { ...identity, body: { ...(identity.body as object), species: 'dog', born: null } },
    make({
      kind: 'weight',
      body: { weight: { value: '12', unit: 'kg' }, typed: null, how: 'scale', bodyCondition: 5 },
    }),
    {
      ...before,
      body: { ...(before.body as object), substance: null, until: null, ongoing: true, ...medicine },
    },
  ])
  const animal = dosedAnimalOf(theCase, at)
  if (!animal) throw new Error('The case knows its animal.')
  const { lines } = doseLines(
    { animal, given: givenOf(theCase, at), at: Temporal.Instant.from(at), lines: [line] },
    knowledge,
  )
  const [answer] = lines
  return { verdict: answer?.verdict, codes: answer?.findings.map(({ code }) => code) }
}

const longAgo = { at: '2026-10-01T00:00:00.000Z', zone: 'Europe/London', precision: 'day', by: 'person' } as const

describe('a medicine whose active nobody settled (AAHA/AAFP 2015: ask what the ear was treated with)', () => {
  it.each(['ear', 'injection', 'depot-injection', 'oral', 'unknown'] as const)(
    'is asked about before an NSAID: %s',
    (route) => {
      const { verdict, codes } = codesAfter({ written: 'Ear treatment of the other practice', route })
      expect(verdict).toBe('caution')
      expect(codes).toContain('given-active-unknown')
    },
  )

  it('is asked about also when only one of its actives stands on the label', () => {
    expect(codesAfter({ written: 'Gentamicin ear drops', route: 'ear' }).codes).toContain('given-active-unknown')
  })

  it('is a steroid when the label says so', () => {
    const { verdict, codes } = codesAfter({ written: 'Prednisolone tablets 5 mg', route: 'oral' })
    expect(verdict).toBe('refused')
    expect(codes).toContain('nsaid-with-steroid')
    expect(codes).not.toContain('given-active-unknown')
  })

  it('is no question for an opioid, nor once every washout is over; a depot stays one', () => {
    expect(codesAfter({ written: 'Ear drops', route: 'ear' }, opioid).codes).not.toContain('given-active-unknown')
    const over = { written: 'Drops', ongoing: false, until: longAgo }
    expect(codesAfter({ ...over, route: 'ear' }).codes).not.toContain('given-active-unknown')
    expect(codesAfter({ ...over, route: 'depot-injection' }).codes).toContain('given-active-unknown')
  })

  it('does not take gentamicin drops for gentamicin in the blood', () => {
    const { codes } = codesAfter({ written: 'Drops', substance: 'gentamicin', route: 'ear' })
    expect(codes).not.toContain('pair-forbidden')
    expect(codesAfter({ written: 'Injection', substance: 'gentamicin', route: 'injection' }).codes).toContain(
      'pair-forbidden',
    )
  })
})

describe('a given drug under a name that is not ours', () => {
  const codesOf = (given: Given[], line: PlannedLine) => {
    const animal = { species: 'dog', weight: quantity('12', 'kg'), conditions: [] } as const
    return doseLines({ animal, given, lines: [line] }, knowledge)
  }

  it('counts as every drug it names, and says so', () => {
    const { lines, findings } = codesOf(
      [{ drug: 'Dexamethasone sodium phosphate', amount: quantity('1', 'mg') }],
      nsaid,
    )
    expect(lines[0]?.findings.map(({ code }) => code)).toContain('nsaid-with-steroid')
    expect(findings.map(({ code }) => code)).toContain('given-drug-read-as')
  })

  it('counts toward the ceiling of local anaesthetic (bupivacaine 2 mg/kg in dogs, Layne 2019)', () => {
    const block: PlannedLine = {
      id: 'block',
      drug: 'bupivacaine',
      use: 'local_block',
      route: 'perineural',
      dose: quantity('1', 'mg/kg'),
      stock: quantity('5', 'mg/mL'),
    }
    const { lines } = codesOf([{ drug: 'bupivacaine HCl 0.5 %', amount: quantity('18', 'mg') }], block)
    expect(lines[0]?.findings.map(({ code }) => code)).toContain('local-anaesthetic-ceiling')
    const mixed = codesOf([{ drug: 'lidocaine/bupivacaine mix', amount: quantity('6', 'mg') }], block)
    expect(mixed.lines[0]?.findings.map(({ code }) => code)).toContain('local-anaesthetic-uncounted')
  })

  it('leaves no NSAID line without a word when it names nothing of ours', () => {
    const { lines } = codesOf([{ drug: 'the white tablet', amount: quantity('5', 'mg') }], nsaid)
    expect(lines[0]?.findings.map(({ code }) => code)).toContain('given-active-unknown')
  })
})
