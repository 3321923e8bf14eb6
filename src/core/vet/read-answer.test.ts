import { describe, expect, it } from 'vitest'
import { check as arrangement } from '#content/forms/check.ts'
import { formOf } from '#core/forms/form.ts'
import { check } from '#core/journal/kinds/check.ts'
import { lookFields, nothingSeen } from './look-fields.ts'
import { type AnswerAsked, readAnswer } from './read-answer.ts'

const fields = lookFields(formOf(arrangement))
const asked: AnswerAsked = { ears: [{ side: 'LEFT', operated: '2026-03-01' }], fields, today: '2026-03-12' }
const read = (typed: Record<string, string>, about: Partial<AnswerAsked> = {}) =>
  readAnswer(new URLSearchParams(typed), { ...asked, ...about })
const good = { by: '  Wren   Hollis ', day: '2026-03-12', 'LEFT.wound': 'closed', 'LEFT.blink': 'weak' }

describe('the questions of the short form', () => {
  it('are those of our own form, but for what a practice elsewhere is not asked', () => {
    const own = Object.keys(check.example)
    const here = fields.flatMap(({ kind, name }) => (kind === 'normal' ? [] : [name]))
    expect(own.filter((name) => !here.includes(name))).toEqual(['seenBy', 'possibleBlockEffect', 'text'])
    expect(here.every((name) => own.includes(name))).toBe(true)
  })

  it('can each be left at “not assessed”, and nothing is then claimed', () => {
    expect(check.body.safeParse(nothingSeen).error).toBeUndefined()
    const claims = Object.entries(nothingSeen).filter(([, answer]) => answer !== 'not-assessed' && answer !== null)
    expect(claims).toEqual([
      ['seenBy', 'referring-vet'],
      ['possibleBlockEffect', false],
    ])
  })
})

describe('an answer of a practice', () => {
  it('is read as a look of that ear by the referring vet; what was not answered stays not assessed', () => {
    expect(read({ ...good, 'LEFT.tearTest': '12,5' })).toEqual({
      examinedBy: 'Wren Hollis',
      day: '2026-03-12',
      ears: [
        {
          side: 'LEFT',
          body: { ...nothingSeen, wound: 'closed', blink: 'weak', tearTest: { value: '12.5', unit: 'mm/min' } },
        },
      ],
      saysDied: false,
      text: null,
    })
  })

  it('says everything that is wrong at once, each at its field', () => {
    const answer = read({ 'LEFT.tearTest': 'low', text: 'x'.repeat(4_001) })
    expect('faults' in answer && answer.faults).toEqual([
      { at: 'by', fault: 'name-missing' },
      { at: 'day', fault: 'day-missing' },
      { at: 'LEFT.tearTest', fault: 'not-a-number' },
      { at: 'text', fault: 'text-too-long' },
    ])
  })

  it('takes one tick for balance that was normal, and refuses it beside a sign that was found', () => {
    const ticked = { ...good, 'LEFT.normal-balance': 'yes', 'LEFT.headTilt': 'not-assessed' }
    const answer = read({ ...ticked, 'LEFT.unsteady': 'no' })
    expect('ears' in answer && answer.ears[0]?.body).toMatchObject({ headTilt: 'no', nystagmus: 'no', unsteady: 'no' })
    const untouched = read({ ...good, 'LEFT.normal-balance': 'on' })
    expect('ears' in untouched && untouched.ears[0]?.body).toMatchObject({ headTilt: 'not-assessed' })
    expect(read({ ...ticked, 'LEFT.nystagmus': 'yes' })).toEqual({
      faults: [{ at: 'LEFT.normal-balance', fault: 'not-normal' }],
    })
  })

  it.each([
    ['2026-03-13', 'day-to-come'],
    ['2026-03-01', 'day-too-early'],
    ['2026-02-30', 'no-such-day'],
    ['12.3.2026', 'no-such-day'],
  ])('refuses the day %s: %s', (day, fault) => {
    expect(read({ ...good, day })).toEqual({ faults: [{ at: 'day', fault }] })
  })

  it('with nothing assessed is no look: it would settle what nobody saw', () => {
    const fault = { at: 'ear-LEFT', fault: 'nothing-assessed' }
    expect(read({ by: 'W', day: '2026-03-12', text: 'All fine.' })).toEqual({ faults: [fault] })
    expect(read({ by: 'W', day: '2026-03-12', 'LEFT.wound': 'splendid', 'RIGHT.wound': 'closed' })).toEqual({
      faults: [fault],
    })
  })

  it('of a death needs a name and nothing else', () => {
    const told = { examinedBy: 'W', day: null, ears: [], saysDied: true, text: null }
    expect(read({ by: 'W', died: 'yes' })).toEqual(told)
    expect(read({ died: 'yes' })).toEqual({ faults: [{ at: 'by', fault: 'name-missing' }] })
  })

  it('of two ears is a look for each ear that was seen', () => {
    const both = { ...asked, ears: [...asked.ears, { side: 'RIGHT' as const, operated: '2026-03-05' }] }
    const sides = (typed: Record<string, string>) => {
      const answer = read(typed, both)
      return 'faults' in answer ? answer : answer.ears.map(({ side }) => side)
    }
    expect(sides(good)).toEqual(['LEFT'])
    expect(sides({ ...good, 'RIGHT.wound': 'gap' })).toEqual(['LEFT', 'RIGHT'])
  })
})
