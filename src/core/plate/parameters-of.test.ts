import { describe, expect, it } from 'vitest'
import { plateFacts } from '#content/plate/plate-facts.ts'
import { plateInEnglish } from '#content/wording/plate.ts'
import type { Side } from '../animal/species.ts'
import { entryMaker } from '../journal/entries-for-tests.ts'
import type { Entry } from '../journal/entry.ts'
import { type BodyOf, fold } from '../journal/fold.ts'
import { earFindings } from '../journal/kinds/ear-findings.ts'
import { imaging } from '../journal/kinds/imaging.ts'
import { operationSummary } from '../journal/kinds/operation-summary.ts'
import { drawPlate } from './draw-plate.ts'
import type { PlateParameters } from './parameters.ts'
import { type PlateWish, plateParametersOf } from './parameters-of.ts'

const asFound: PlateWish = { view: 'transverse', show: 'as-found', operation: null }
const operation = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
const ear = (side: Side) => ({ kind: 'ear', animal: 'animal-1', side }) as const

function parameters(entries: readonly Entry[], side: Side = 'LEFT', wish: PlateWish = asFound): PlateParameters {
  const result = plateParametersOf(fold(entries), side, wish)
  if (result.kind === 'refusal') throw new Error(result.refusal.because)
  return result.answer
}

describe('the parameters of a plate', () => {
  it('are refused for an animal whose species nobody wrote down', () => {
    const make = entryMaker()
    expect(plateParametersOf(fold([make({ kind: 'ear-findings', subject: ear('LEFT') })]), 'LEFT', asFound)).toEqual({
      kind: 'refusal',
      refusal: { because: 'species-not-recorded' },
    })
  })

  it('are "not assessed" throughout when only the animal is known', () => {
    const make = entryMaker()
    const known = parameters([make({ kind: 'identity' })])
    expect(known).toMatchObject({
      carriage: 'not-recorded',
      narrowing: { vertical: 'not-assessed', horizontal: 'not-assessed' },
      mineral: 'not-assessed',
      drum: 'not-assessed',
      bullaContent: 'not-assessed',
      bullaWall: 'not-assessed',
      mass: { kind: 'not-assessed' },
    })
  })

  it('come from the findings and the scan of that ear alone', () => {
    const make = entryMaker()
    const entries = [
      make({ kind: 'identity' }),
      make({ kind: 'ear-findings', subject: ear('LEFT') }),
      make({ kind: 'imaging' }),
    ]
    expect(parameters(entries, 'LEFT')).toMatchObject({
      narrowing: { vertical: 'closed', horizontal: 'closed', recorded: 'whole' },
      drum: 'could-not-see',
      mineral: 'yes',
      bullaContent: 'filled',
      bullaWall: 'thick',
      mass: { kind: 'none' },
    })
    expect(parameters(entries, 'RIGHT')).toMatchObject({
      narrowing: { vertical: 'not-assessed' },
      drum: 'not-assessed',
      bullaContent: 'air',
      bullaWall: 'normal',
    })
  })

  it('keep what was seen when a later look did not assess it, and follow a correction', () => {
    const make = entryMaker()
    const seen = make({ kind: 'ear-findings', subject: ear('LEFT') })
    const later = make({
      kind: 'ear-findings',
      subject: ear('LEFT'),
      body: { ...earFindings.example, stenosis: 'not-assessed', drum: 'ruptured' } as BodyOf<'ear-findings'>,
    })
    const corrected = make({
      kind: 'ear-findings',
      subject: ear('LEFT'),
      supersedes: [seen.id],
      reason: 'Written for the other ear.',
      body: { ...earFindings.example, stenosis: 'mild' } as BodyOf<'ear-findings'>,
    })
    const identity = make({ kind: 'identity' })
    expect(parameters([identity, seen, later])).toMatchObject({ narrowing: { vertical: 'closed' }, drum: 'ruptured' })
    expect(parameters([identity, seen, later, corrected])).toMatchObject({ narrowing: { vertical: 'mild' } })
  })

  it('name a mass without a place in words and draw none', () => {
    const make = entryMaker()
    const example = imaging.example as BodyOf<'imaging'>
    const entries = [
      make({ kind: 'identity' }),
      make({ kind: 'imaging', body: { ...example, LEFT: example.LEFT && { ...example.LEFT, mass: 'yes' } } }),
    ]
    const found = parameters(entries)
    expect(found.mass).toEqual({ kind: 'place-not-recorded' })
    const scene = drawPlate(found, plateFacts, plateInEnglish)
    expect(scene.shapes.some(({ structure }) => structure === 'mass')).toBe(false)
    expect(scene.notes).toContain(plateInEnglish.notes.massPlaceNotRecorded)
  })

  it('place a mass where the later of look and scan saw it, with the size said for that place', () => {
    const make = entryMaker()
    const look = (more: Partial<BodyOf<'ear-findings'>>) =>
      make({
        kind: 'ear-findings',
        subject: ear('LEFT'),
        body: { ...earFindings.example, ...more } as BodyOf<'ear-findings'>,
      })
    const scan = (massPlace: 'horizontal' | 'not-reported') => {
      const example = imaging.example as BodyOf<'imaging'>
      const side = example.LEFT && { ...example.LEFT, mass: 'yes' as const, massPlace }
      return make({ kind: 'imaging', body: { ...example, LEFT: side } })
    }
    const seen = look({ mass: 'yes', massPlace: 'vertical', massSize: 'large', flapCarriage: 'erect' })
    const base = [make({ kind: 'identity' }), seen]
    expect(parameters(base)).toMatchObject({
      carriage: 'erect',
      mass: { kind: 'placed', place: 'vertical', size: 'large' },
    })
    expect(parameters([...base, scan('not-reported')]).mass).toEqual({
      kind: 'placed',
      place: 'vertical',
      size: 'large',
    })
    expect(parameters([...base, scan('horizontal')]).mass).toEqual({
      kind: 'placed',
      place: 'horizontal',
      size: 'not-recorded',
    })
  })

  it('take from the stamps how the ear was left, and nothing that was not stamped', () => {
    const make = entryMaker()
    const stamp = (checkpoint: string, detail: Record<string, string>) =>
      make({ kind: 'theatre-stamp', subject: operation, body: { checkpoint, answer: 'done', detail, text: null } })
    const base = [make({ kind: 'identity' }), make({ kind: 'operation-summary', subject: operation })]
    const left: PlateWish = { ...asFound, show: 'as-left' }
    expect(parameters(base, 'LEFT', left).surgery).toEqual({
      kind: 'done',
      incision: 'not-recorded',
      canal: 'not-recorded',
      bulla: 'not-recorded',
    })
    const stamped = [
      ...base,
      stamp('k1-skin', { cut: 't-shaped' }),
      stamp('k4-horizontal-canal', {}),
      stamp('k6-bulla', { wall: 'eaten-away' }),
      stamp('k8-curettage', { content: 'keratin' }),
    ]
    expect(parameters(stamped, 'LEFT', left)).toMatchObject({
      surgery: { kind: 'done', incision: 'T-shaped', canal: 'taken-away', bulla: 'opened' },
      bullaWall: 'eaten-away',
      bullaContent: 'filled',
    })
    expect(plateParametersOf(fold(stamped), 'RIGHT', left)).toEqual({
      kind: 'refusal',
      refusal: { because: 'side-has-no-operation' },
    })
  })

  it('draw no lines of an operation the plate has no drawing for, and say so', () => {
    const make = entryMaker()
    const summary = operationSummary.example as BodyOf<'operation-summary'>
    const entries = [
      make({ kind: 'identity' }),
      make({ kind: 'operation-summary', subject: operation, body: { ...summary, procedure: 'traction' } }),
    ]
    const found = parameters(entries, 'LEFT', { ...asFound, show: 'as-left' })
    expect(found.surgery).toEqual({ kind: 'not-drawn' })
    expect(drawPlate(found, plateFacts, plateInEnglish).notes).toContain(plateInEnglish.notes.operationNotDrawn)
  })
})
