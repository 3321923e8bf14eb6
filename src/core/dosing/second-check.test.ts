import { describe, expect, it } from 'vitest'
import { canonical, hashText, type Json } from '#core/journal/canonical.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { plannedLine } from '#core/journal/kinds/planned-line.ts'
import { quantity } from '#core/units/quantity.ts'
import { storedHow } from './how-given.ts'
import { boundPlanOf, type CheckState, checkStates, type Voided } from './second-check.ts'

const other = { kind: 'person', person: 'person-second' } as const
const kg = (value: string) => ({ value, unit: 'kg' }) as const

/** A dog of 8.2 kg with two planned lines, checked by another person. */
function checked() {
  const make = entryMaker()
  const who = make({ kind: 'identity' })
  const scale = weigh(make, '8.2')
  const block = make({ kind: 'planned-line' })
  const splash = make({ kind: 'planned-line', body: { ...plannedLine.example, line: 'splash' } })
  const before = [who, scale, block, splash]
  const check = (verdict: BodyOf<'second-check'>['verdict'] = 'agrees', author: Entry['author'] = other) => {
    const theCase = fold(before)
    const plan = boundPlanOf(theCase, theCase.live('planned-line'))
    return make({ kind: 'second-check', author, body: { of: [block.id, splash.id], verdict, text: null, plan } })
  }
  return { make, who, block, splash, before, check }
}

function weigh(make: ReturnType<typeof entryMaker>, value: string): Entry {
  return make({ kind: 'weight', body: { weight: kg(value), typed: null, how: 'scale', bodyCondition: null } })
}

function statesOf(entries: readonly Entry[], asOf: string | null = null): CheckState[] {
  const theCase = fold(entries)
  const lines = theCase.live('planned-line')
  const states = checkStates(theCase, lines, asOf)
  return lines.map(({ header }) => states.get(header.id) ?? { kind: 'none' })
}

function voided(entries: readonly Entry[]): readonly (readonly Voided[] | string)[] {
  return statesOf(entries).map((state) => (state.kind === 'void' ? state.because : state.kind))
}

describe('the name of a second person', () => {
  it('stands for every line it was given for', () => {
    const { before, check } = checked()
    expect(statesOf(before).map(({ kind }) => kind)).toEqual(['none', 'none'])
    expect(statesOf([...before, check()]).map(({ kind }) => kind)).toEqual(['agrees', 'agrees'])
    expect(statesOf([...before, check('disagrees')]).map(({ kind }) => kind)).toEqual(['disagrees', 'disagrees'])
  })

  it('still counts on lines that were written and checked before lines kept bag, course and product', () => {
    const { make, who } = checked()
    const scale = weigh(make, '8.2')
    const { shelfItem: _, how: __, deficit: ___, blood: ____, worked: _____, ...older } = plannedLine.example
    const line: Entry = { ...make({ kind: 'planned-line' }), version: 1, body: older as unknown as Entry['body'] }
    // As version 1 bound it: over the body as it was written then.
    const bound = { species: 'dog', weight: kg('8.2') } as const
    const fingerprint = hashText(canonical({ ...bound, lines: [{ id: line.id, body: older }] } as unknown as Json))
    const body = { of: [line.id], verdict: 'agrees' as const, text: null, plan: { ...bound, fingerprint } }
    const check = make({ kind: 'second-check', author: other, body })
    expect(statesOf([who, scale, line, check]).map(({ kind }) => kind)).toEqual(['agrees'])
  })

  it('is void once the line runs over another time, although drug, dose and weight stay', () => {
    const { make, block, before, check } = checked()
    const how = storedHow({ over: quantity('30', 'min') })
    const slower = make({
      kind: 'planned-line',
      body: { ...plannedLine.example, how },
      supersedes: [block.id],
      reason: 'Slower.',
    })
    expect(voided([...before, check(), slower])).toEqual(['agrees', [{ what: 'how' }]])
  })

  it('is void for every line once another weight is on record, and says from which to which', () => {
    const { make, before, check } = checked()
    const entries = [...before, check(), weigh(make, '2.8')]
    const because = [{ what: 'weight', from: '8.2 kg', to: '2.8 kg' }]
    expect(voided(entries)).toEqual([because, because])
  })

  it('stays when the same weight is written again with other digits', () => {
    const { make, before, check } = checked()
    expect(voided([...before, check(), weigh(make, '8.20')])).toEqual(['agrees', 'agrees'])
  })

  it('is void when the species was corrected', () => {
    const { make, who, before, check } = checked()
    const cat = make({
      kind: 'identity',
      body: { ...identity.example, species: 'cat' },
      supersedes: [who.id],
      reason: 'It is a cat.',
    })
    const because = [{ what: 'species', from: 'dog', to: 'cat' }]
    expect(voided([...before, check(), cat])).toEqual([because, because])
  })

  it('is void only for the line whose dose or strength changed', () => {
    const { make, block, before, check } = checked()
    const dose = { value: '1.5', unit: 'mg/kg' } as const
    const stock = { value: '2.5', unit: 'mg/mL' } as const
    const newer = make({
      kind: 'planned-line',
      body: { ...plannedLine.example, dose, stock },
      supersedes: [block.id],
      reason: 'Another ampoule.',
    })
    expect(voided([...before, check(), newer])).toEqual([
      'agrees',
      [
        { what: 'dose', from: '1 mg/kg', to: '1.5 mg/kg' },
        { what: 'strength', from: '5 mg/mL', to: '2.5 mg/mL' },
      ],
    ])
  })

  it('of the person who planned the lines is no second name; "nobody available" may be said by anybody', () => {
    const { before, block, check } = checked()
    expect(voided([...before, check('agrees', block.author)])).toEqual(['same-person', 'same-person'])
    expect(voided([...before, check('nobody-available', block.author)])).toEqual([
      'nobody-available',
      'nobody-available',
    ])
  })

  it('does not stand under a fingerprint of something else', () => {
    const { before, check } = checked()
    const genuine = check()
    const body = genuine.body as BodyOf<'second-check'>
    const forged = { ...genuine, body: { ...body, plan: { ...body.plan, fingerprint: 'a'.repeat(64) } } } as Entry
    expect(voided([...before, forged])).toEqual([[{ what: 'fingerprint' }], [{ what: 'fingerprint' }]])
  })

  it('is kept by an operation that is over, whatever the animal weighs later', () => {
    const { make, before, check } = checked()
    const given = check()
    const later = weigh(make, '9.1')
    expect(statesOf([...before, given, later], given.happenedAt.at).map(({ kind }) => kind)).toEqual([
      'agrees',
      'agrees',
    ])
  })

  it('written by an older program is bound to the weight of the lines themselves', () => {
    const { make, before, block, splash } = checked()
    const old = make({ kind: 'second-check', version: 1, author: other })
    const v1 = { ...old, body: { of: [block.id, splash.id], verdict: 'agrees', text: null } }
    expect(voided([...before, v1])).toEqual(['agrees', 'agrees'])
    expect(voided([...before, v1, weigh(make, '2.8')])[0]).toEqual([{ what: 'weight', from: '8.2 kg', to: '2.8 kg' }])
  })
})
