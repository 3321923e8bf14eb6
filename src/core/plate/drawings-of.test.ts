import { describe, expect, it } from 'vitest'
import { entryMaker } from '../journal/entries-for-tests.ts'
import { type BodyOf, fold } from '../journal/fold.ts'
import { earFindings } from '../journal/kinds/ear-findings.ts'
import { plateDrawing } from '../journal/kinds/plate-drawing.ts'
import { drawingsOf } from './drawings-of.ts'
import { plateVersion } from './parameters.ts'
import { plateParametersOf } from './parameters-of.ts'

const left = { kind: 'ear', animal: 'animal-1', side: 'LEFT' } as const
const right = { ...left, side: 'RIGHT' } as const
const drawn = { ...plateDrawing.example, plate: plateVersion } as BodyOf<'plate-drawing'>

describe('a drawing on the plate', () => {
  it('stays exactly as it was drawn when the findings change afterwards', () => {
    const make = entryMaker()
    const before = [make({ kind: 'identity' }), make({ kind: 'ear-findings', subject: left })]
    const wish = { view: 'transverse', show: 'as-found', operation: null } as const
    const seen = plateParametersOf(fold(before), 'LEFT', wish)
    if (seen.kind === 'refusal') throw new Error(seen.refusal.because)
    const kept = make({
      kind: 'plate-drawing',
      subject: left,
      body: { ...drawn, parameters: { ...seen.answer, layers: [...seen.answer.layers] } },
    })
    const later = make({
      kind: 'ear-findings',
      subject: left,
      body: { ...earFindings.example, stenosis: 'none', drum: 'intact' } as BodyOf<'ear-findings'>,
    })
    const theCase = fold([...before, kept, later])
    expect(drawingsOf(theCase, 'LEFT')[0]?.line.body.parameters).toEqual(seen.answer)
    expect(plateParametersOf(theCase, 'LEFT', wish)).not.toEqual(seen)
  })

  it('is found under its ear alone, in order, and a withdrawn one is not', () => {
    const make = entryMaker()
    const [first, second] = [
      make({ kind: 'plate-drawing', subject: left, body: drawn }),
      make({ kind: 'plate-drawing', subject: left, body: drawn }),
    ]
    const gone = make({ kind: 'withdrawal', subject: left, withdraws: first.id, reason: 'Drawn to try the pen.' })
    expect(drawingsOf(fold([second, first]), 'LEFT').map(({ line }) => line.header.id)).toEqual([first.id, second.id])
    expect(drawingsOf(fold([first, second]), 'RIGHT')).toEqual([])
    expect(drawingsOf(fold([first, second, gone]), 'LEFT').map(({ line }) => line.header.id)).toEqual([second.id])
  })

  it('is shown with a doubt when it was filed to the other ear, or drawn on another plate', () => {
    const make = entryMaker()
    const theCase = fold([
      make({ kind: 'plate-drawing', subject: right, body: drawn }),
      make({ kind: 'plate-drawing', subject: right, body: { ...drawn, plate: plateVersion + 1 } }),
    ])
    expect(drawingsOf(theCase, 'RIGHT').map(({ doubts }) => doubts)).toEqual([
      ['other-side'],
      ['other-side', 'other-plate'],
    ])
  })
})
