import { describe, expect, it } from 'vitest'
import { pinPlaces } from '#content/plate/pin-places.ts'
import { procedures } from '#content/procedures/index.ts'
import { entryMaker } from '../journal/entries-for-tests.ts'
import { type BodyOf, fold } from '../journal/fold.ts'
import { check } from '../journal/kinds/check.ts'
import { earFindings } from '../journal/kinds/ear-findings.ts'
import { pinnedTo } from './pinned.ts'

const facts = { places: pinPlaces, procedures }
const left = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const
const operation = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const

function wholeCase() {
  const make = entryMaker()
  const entries = {
    look: make({ kind: 'ear-findings', subject: left }),
    scan: make({ kind: 'imaging' }),
    baseline: make({ kind: 'baseline' }),
    choice: make({ kind: 'choice', subject: left }),
    agreement: make({ kind: 'agreement' }),
    booking: make({ kind: 'booking', subject: operation }),
    stamp: make({ kind: 'theatre-stamp', subject: operation }),
  }
  return { make, entries, theCase: fold(Object.values(entries)) }
}

describe('what is pinned to a part of the ear', () => {
  it('is what was found there, with the entry that says so, for that side alone', () => {
    const { entries, theCase } = wholeCase()
    const bulla = pinnedTo('bulla', theCase, 'LEFT', facts).known
    expect(bulla).toContainEqual(expect.objectContaining({ kind: 'sign', sign: 'bulla', answer: 'filled' }))
    expect(bulla.map((pin) => 'from' in pin && pin.from.entry)).toContain(entries.scan.id)
    expect(pinnedTo('drum', theCase, 'LEFT', facts).known).toEqual([
      expect.objectContaining({
        sign: 'drum',
        answer: 'could-not-see',
        from: expect.objectContaining({ entry: entries.look.id }),
      }),
    ])
    expect(pinnedTo('drum', theCase, 'RIGHT', facts).known).toEqual([])
  })

  it('is the plan that was chosen, agreed and booked, and what the surgeon minds there', () => {
    const { theCase } = wholeCase()
    const { planned } = pinnedTo('vertical-canal', theCase, 'LEFT', facts)
    expect(planned.filter(({ kind }) => kind === 'plan').map((pin) => pin.kind === 'plan' && pin.plan)).toEqual([
      'chosen',
      'agreed',
      'booked',
    ])
    expect(planned.some((pin) => pin.kind === 'step' && pin.checkpoint.id === 'k2-vertical-canal')).toBe(true)
    expect(pinnedTo('vertical-canal', theCase, 'RIGHT', facts).planned).toEqual([])
  })

  it('names the risks of the planned operation where they lie, each reason with its source (Smeak and Inpanbutr 2005 for the nerve)', () => {
    const { theCase } = wholeCase()
    const { atRisk, known } = pinnedTo('facial-nerve', theCase, 'LEFT', facts)
    expect(atRisk).toContainEqual({
      kind: 'risk',
      procedure: 'teca-lbo',
      outcome: 'facial_nerve_deficit_permanent',
      shows: 'late',
    })
    const reasons = atRisk.flatMap((pin) => (pin.kind === 'reason' ? [pin.because] : []))
    expect(reasons.flatMap(({ sources }) => sources)).toContain('smeak-inpanbutr-2005')
    expect(known).toContainEqual(
      expect.objectContaining({ kind: 'stamp', sentences: expect.arrayContaining(['The facial nerve was seen.']) }),
    )
    expect(pinnedTo('facial-nerve', theCase, 'RIGHT', facts).atRisk).toEqual([])
  })

  it('keeps the last answer that was one, and does not take a blink within the block for a finding', () => {
    const { make, entries } = wholeCase()
    const body = { ...earFindings.example, drum: 'ruptured' } as BodyOf<'ear-findings'>
    const seen = make({ kind: 'ear-findings', subject: left, body })
    const unseen = make({ kind: 'ear-findings', subject: left, body: { ...body, drum: 'not-assessed' } })
    const blocked = make({
      kind: 'check',
      subject: left,
      body: { ...check.example, blink: 'absent', possibleBlockEffect: true } as BodyOf<'check'>,
    })
    const theCase = fold([...Object.values(entries), seen, unseen, blocked])
    expect(pinnedTo('drum', theCase, 'LEFT', facts).known).toContainEqual(
      expect.objectContaining({ sign: 'drum', answer: 'ruptured', from: expect.objectContaining({ entry: seen.id }) }),
    )
    expect(pinnedTo('nerve-to-lids', theCase, 'LEFT', facts).known).toContainEqual(
      expect.objectContaining({ sign: 'blink', answer: 'normal' }),
    )
  })

  it('points only at steps and risks that exist', () => {
    const steps = new Set<string>(procedures.flatMap(({ checkpoints }) => checkpoints.map(({ id }) => id)))
    for (const step of Object.keys(pinPlaces.checkpoints)) expect(steps.has(step), step).toBe(true)
    const risks = new Set<string>(procedures.flatMap((one) => one.risks.map(({ outcome }) => outcome)))
    const local = Object.keys(pinPlaces.outcomes.value)
    expect(local.filter((outcome) => risks.has(outcome)).length).toBeGreaterThan(15)
  })
})
