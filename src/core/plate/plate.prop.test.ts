import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plateFacts } from '#content/plate/plate-facts.ts'
import { plateInEnglish } from '#content/wording/plate.ts'
import { sides, speciesList } from '../animal/species.ts'
import { describePlate } from './describe.ts'
import { drawPlate, mirrorShape } from './draw-plate.ts'
import { mirrorPath, mirrorPoint, type Point } from './geometry.ts'
import { cross, layoutPlate, type PlacedLabel } from './layout.ts'
import {
  bullaContents,
  bullaWalls,
  carriages,
  drumStates,
  incisions,
  layers,
  massPlaces,
  massSizes,
  narrowings,
  openings,
  type PlateParameters,
  removals,
  views,
  yesNoUnknown,
} from './parameters.ts'
import { unknownEar, wellEar } from './plates-for-tests.ts'
import type { Box } from './scene.ts'
import { sceneToSvg } from './svg.ts'
import { themes } from './theme.ts'

const surgery = fc.oneof(
  fc.record({ kind: fc.constantFrom('none' as const, 'not-drawn' as const) }),
  fc.record({
    kind: fc.constantFrom('planned' as const, 'done' as const),
    incision: fc.constantFrom(...incisions),
    canal: fc.constantFrom(...removals),
    bulla: fc.constantFrom(...openings),
  }),
)

/** Any ear the parameters can say. */
const anyEar: fc.Arbitrary<PlateParameters> = fc.record({
  species: fc.constantFrom(...speciesList),
  side: fc.constantFrom(...sides),
  view: fc.constantFrom(...views),
  carriage: fc.constantFrom(...carriages),
  narrowing: fc.record({
    vertical: fc.constantFrom(...narrowings),
    horizontal: fc.constantFrom(...narrowings),
    recorded: fc.constantFrom('whole' as const, 'by-part' as const),
  }),
  mineral: fc.constantFrom(...yesNoUnknown),
  drum: fc.constantFrom(...drumStates),
  bullaContent: fc.constantFrom(...bullaContents),
  bullaWall: fc.constantFrom(...bullaWalls),
  mass: fc.oneof(
    fc.record({ kind: fc.constantFrom('none' as const, 'not-assessed' as const, 'place-not-recorded' as const) }),
    fc.record({
      kind: fc.constant('placed' as const),
      place: fc.constantFrom(...massPlaces),
      size: fc.constantFrom(...massSizes),
    }),
  ),
  surgery,
  layers: fc.oneof(fc.constant(layers), fc.subarray([...layers])),
})

const widths = fc.constantFrom(320, 480, 642, 768, 1200)
const draw = (parameters: PlateParameters) => drawPlate(parameters, plateFacts, plateInEnglish)

function overlap(a: Box, b: Box): boolean {
  return (
    a.x < b.x + b.width - 0.5 && b.x < a.x + a.width - 0.5 && a.y < b.y + b.height - 0.5 && b.y < a.y + a.height - 0.5
  )
}

/** Whether a straight line passes through a box. */
function through(box: Box, [a, b]: readonly Point[]): boolean {
  if (!a || !b) return false
  const { x, y, width, height } = box
  const inside = ([px, py]: Point) => px > x && px < x + width && py > y && py < y + height
  const corners: Point[] = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ]
  return (
    inside(a) || inside(b) || corners.some((corner, index) => cross(a, b, corner, corners[(index + 1) % 4] ?? corner))
  )
}

function wordsOf(parameters: PlateParameters, width: number): { all: PlacedLabel[]; width: number; height: number } {
  const layout = layoutPlate(draw(parameters), { width })
  return {
    all: [...layout.labels, ...layout.texts, ...layout.key.map(({ label }) => label)],
    width: layout.width,
    height: layout.height,
  }
}

describe('a plate of any ear', () => {
  it('is drawn in every theme and at every size, without a not-a-number and with the side as a word', () => {
    fc.assert(
      fc.property(anyEar, widths, fc.constantFrom(...themes), (parameters, width, theme) => {
        const scene = draw(parameters)
        const svg = sceneToSvg(scene, { width, theme, description: describePlate(scene, plateInEnglish) })
        expect(svg).not.toMatch(/NaN|undefined|Infinity/)
        expect(svg).toContain(`>${parameters.side} EAR</text>`)
      }),
      { numRuns: 150 },
    )
  })

  it('is the same to the byte when drawn again', () => {
    fc.assert(
      fc.property(anyEar, widths, (parameters, width) => {
        const once = sceneToSvg(draw(parameters), { width, theme: 'light', description: '' })
        expect(sceneToSvg(draw(structuredClone(parameters)), { width, theme: 'light', description: '' })).toBe(once)
      }),
      { numRuns: 40 },
    )
  })

  it('is for the LEFT ear the exact mirror of the RIGHT one, words of direction excepted', () => {
    fc.assert(
      fc.property(anyEar, (parameters) => {
        const left = draw({ ...parameters, side: 'LEFT' })
        const right = draw({ ...parameters, side: 'RIGHT' })
        const drawnRight = right.shapes.filter(({ upright }) => !upright)
        expect(left.shapes.filter(({ upright }) => !upright)).toEqual(
          drawnRight.map((shape) => ({ ...shape, path: mirrorPath(shape.path) })),
        )
        expect(left.shapes).toEqual(right.shapes.map(mirrorShape))
        expect(left.hits).toEqual(right.hits.map((hit) => ({ ...hit, path: mirrorPath(hit.path) })))
        expect(left.labels).toEqual(right.labels.map((label) => ({ ...label, at: mirrorPoint(label.at) })))
        expect([left.leftward, left.rightward]).toEqual([right.rightward, right.leftward])
        expect(left.title).not.toBe(right.title)
      }),
      { numRuns: 80 },
    )
  })

  it('has no two words on each other, none outside the sheet, and no leader through a word', () => {
    fc.assert(
      fc.property(anyEar, widths, (parameters, width) => {
        const { all, height } = wordsOf(parameters, width)
        const faults: string[] = []
        for (const [index, label] of all.entries()) {
          const word = label.lines[0]?.text
          const { box } = label
          if (box.x < 0 || box.x + box.width > width || box.y + box.height > height) faults.push(`${word} is outside`)
          for (const other of all.slice(index + 1)) {
            if (overlap(box, other.box)) faults.push(`${word} on ${other.lines[0]?.text}`)
          }
          for (const other of all) {
            if (through(other.box, label.leader)) faults.push(`${label.structure} through ${other.lines[0]?.text}`)
          }
        }
        expect(faults).toEqual([])
      }),
      { numRuns: 200 },
    )
  })

  it('points every leader at the drawing, and no two leaders of one side cross', () => {
    fc.assert(
      fc.property(anyEar, widths, (parameters, width) => {
        const { labels, drawing } = layoutPlate(draw(parameters), { width })
        for (const [index, { leader, structure, anchor }] of labels.entries()) {
          const [a, b] = leader
          if (!a || !b) throw new Error(`${structure} has no leader`)
          expect(
            b[0] >= drawing.x &&
              b[0] <= drawing.x + drawing.width &&
              b[1] >= drawing.y &&
              b[1] <= drawing.y + drawing.height,
            structure,
          ).toBe(true)
          for (const other of labels.slice(index + 1)) {
            const [c, d] = other.leader
            if (c && d && other.anchor === anchor)
              expect(cross(a, b, c, d), `${structure} × ${other.structure}`).toBe(false)
          }
        }
      }),
      { numRuns: 100 },
    )
  })

  it('says in its description every word and every state that is on the drawing', () => {
    fc.assert(
      fc.property(anyEar, (parameters) => {
        const scene = draw(parameters)
        const said = describePlate(scene, plateInEnglish)
        for (const { text, state } of scene.labels) {
          expect(said).toContain(text)
          if (state !== null) expect(said).toContain(state)
        }
        for (const note of scene.notes) expect(said).toContain(note)
        for (const { structure } of scene.shapes) {
          if (structure === 'body') continue
          expect(
            scene.labels.some((label) => label.structure === structure || unnamed.has(structure)),
            structure,
          ).toBe(true)
        }
      }),
      { numRuns: 100 },
    )
  })

  it('draws nothing of a layer that is off', () => {
    fc.assert(
      fc.property(anyEar, (parameters) => {
        const scene = draw(parameters)
        expect(scene.shapes.every(({ layer }) => parameters.layers.includes(layer))).toBe(true)
        if (parameters.layers.length === 0) expect([scene.shapes, scene.labels, scene.hits]).toEqual([[], [], []])
      }),
      { numRuns: 50 },
    )
  })

  it('never draws an unknown as the state of a healthy ear', () => {
    const known = draw(wellEar)
    const unknown = draw(unknownEar)
    const dashed = unknown.shapes.filter(({ stroke }) => stroke === 'unknown').map(({ structure }) => structure)
    for (const structure of ['flap', 'cartilage', 'vertical-canal', 'horizontal-canal', 'drum', 'bulla'] as const) {
      expect(dashed).toContain(structure)
      expect(unknown.labels.find((label) => label.structure === structure)?.state).toMatch(/not (assessed|recorded)/)
    }
    expect(known.shapes.some(({ stroke }) => stroke === 'unknown' || stroke === 'question')).toBe(false)
    expect(unknown.shapes.filter(({ stroke }) => stroke === 'question').length).toBeGreaterThanOrEqual(6)
    expect(unknown.shapes.some(({ fill }) => fill === 'air')).toBe(false)
  })
})

/** Drawn as part of a structure that is named. */
const unnamed = new Set(['septum', 'opening', 'nerve-foramen', 'nerve-to-lids'])
