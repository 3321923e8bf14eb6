import { describe, expect, it } from 'vitest'
import { earDimensions } from '#content/plate/dimensions.ts'
import { plateFacts } from '#content/plate/plate-facts.ts'
import { plateInEnglish } from '#content/wording/plate.ts'
import { speciesList } from '../animal/species.ts'
import { canalOf, centreAt, lumenOf, stretch, walls } from './canal.ts'
import { drawPlate } from './draw-plate.ts'
import type { LateralLine, TransverseLine } from './facts.ts'
import { cornersOf, distance, type Point, pointsOf, sampled } from './geometry.ts'
import { narrowings, type PlateParameters } from './parameters.ts'
import { wellEar } from './plates-for-tests.ts'
import type { StructureId } from './scene.ts'

const across = (species: 'dog' | 'cat', line: TransverseLine) =>
  pointsOf(plateFacts[species].transverse.lines[line].value)
const aside = (species: 'dog' | 'cat', line: LateralLine) => pointsOf(plateFacts[species].lateral.lines[line].value)
const mean = (points: readonly Point[]): Point => [
  points.reduce((sum, [x]) => sum + x, 0) / points.length,
  points.reduce((sum, [, y]) => sum + y, 0) / points.length,
]
const first = (points: readonly Point[]): Point => points[0] ?? [Number.NaN, Number.NaN]
const last = (points: readonly Point[]): Point => points.at(-1) ?? [Number.NaN, Number.NaN]
const draw = (more: Partial<PlateParameters>) => drawPlate({ ...wellEar, ...more }, plateFacts, plateInEnglish)
const spotOf = (more: Partial<PlateParameters>, structure: StructureId): Point => {
  const label = draw(more).labels.find((one) => one.structure === structure)
  if (!label) throw new Error(`${structure} is not named`)
  return label.at
}
const lengthOf = (line: readonly Point[]) =>
  line.slice(1).reduce((sum, point, index) => sum + distance(line[index] ?? point, point), 0)

/** The centre line of the canal in canvas units. */
function centreLine(species: 'dog' | 'cat', from: number, to: number): Point[] {
  const canal = canalOf(plateFacts[species].transverse)
  return Array.from({ length: 61 }, (_, index) => centreAt(canal, from + ((to - from) * index) / 60))
}

function inside([x, y]: Point, polygon: readonly Point[]): boolean {
  return polygon.reduce((within, [ax, ay], index) => {
    const [bx, by] = polygon[(index + 1) % polygon.length] ?? [ax, ay]
    return ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax ? !within : within
  }, false)
}

describe.each(speciesList)(
  'the transverse plate of the %s (RIGHT from the front: lateral left, medial right)',
  (species) => {
    const { bend } = plateFacts[species].transverse.parts.value

    it('has the brain and the inner ear on the midline side, whichever side it is', () => {
      const right = { species, side: 'RIGHT' } as const
      const left = { species, side: 'LEFT' } as const
      for (const structure of ['brain', 'inner-ear'] as const) {
        expect(spotOf(right, structure)[0]).toBeGreaterThan(spotOf(right, 'vertical-canal')[0])
        expect(spotOf(left, structure)[0]).toBeLessThan(spotOf(left, 'vertical-canal')[0])
      }
    })

    it('bends the canal into an L: about 75 degrees in the dog, about 90 in the cat (web text on examining the canal; icatcare.org)', () => {
      const [down, inward] = [centreLine(species, 0.05, bend * 0.75), centreLine(species, bend + 0.2, 0.9)]
      const angle = (line: readonly Point[]) => {
        const [a, b] = [first(line), last(line)]
        return (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI
      }
      const turn = angle(down) - angle(inward)
      expect(turn).toBeGreaterThan(species === 'dog' ? 68 : 80)
      expect(turn).toBeLessThan(species === 'dog' ? 82 : 95)
    })

    it('gives the vertical part about the length of the horizontal one in the dog, and more than it in the cat', () => {
      const [vertical, horizontal] = [lengthOf(centreLine(species, 0, bend)), lengthOf(centreLine(species, bend, 1))]
      if (species === 'dog') expect(vertical / horizontal).toBeGreaterThan(0.8)
      if (species === 'dog') expect(vertical / horizontal).toBeLessThan(1.3)
      else expect(vertical).toBeGreaterThan(horizontal)
    })

    it('is a funnel: widest at the mouth, narrower before the drum', () => {
      const { outer, inner } = canalOf(plateFacts[species].transverse)
      const width = (share: number) => {
        const index = Math.round(share * (outer.length - 1))
        return distance(outer[index] ?? [0, 0], inner[index] ?? [0, 0])
      }
      expect(width(0)).toBeGreaterThan(width(0.3))
      expect(width(0)).toBeGreaterThan(width(0.85))
    })

    it('keeps the lumen inside the cartilage at every grade, and smaller with every grade', () => {
      const canal = canalOf(plateFacts[species].transverse)
      const tube = walls(canal, 20)
      const ring = [...tube.outer, ...[...tube.inner].reverse()]
      const known = narrowings.filter((grade) => grade !== 'could-not-see' && grade !== 'not-assessed')
      const sizes = known.map((grade) => {
        const lumen = lumenOf(canal, { vertical: grade, horizontal: grade }, plateFacts.areaLost.value)
        const middle = stretch(lumen, 0.1, 0.85)
        for (const point of [...middle.outer, ...middle.inner]) expect(inside(point, ring), grade).toBe(true)
        return middle.outer.reduce((sum, point, index) => sum + distance(point, middle.inner[index] ?? point), 0)
      })
      expect(sizes).toEqual([...sizes].sort((a, b) => b - a))
      expect((sizes.at(-1) ?? 0) / (sizes[0] ?? 1)).toBeLessThan(0.06)
    })

    it('begins the ring inside the end of the auricular cartilage and ends it over the bony rim', () => {
      const { auricularEnd, annularStart, annularEnd } = plateFacts[species].transverse.parts.value
      expect(annularStart).toBeLessThan(auricularEnd)
      const ring = last(stretch(walls(canalOf(plateFacts[species].transverse), 28), 0, annularEnd).inner)
      const rim = across(species, 'meatusRoof').map(([x]) => x)
      expect(ring[0]).toBeGreaterThan(Math.min(...rim) - 25)
    })

    it('sets the tragus on the lateral wall and the anthelix opposite it, on the medial one, at the mouth', () => {
      const [tragus, anthelix] = [spotOf({ species }, 'tragus'), spotOf({ species }, 'anthelix')]
      const mouth = centreLine(species, 0, 0.1)
      expect(tragus[0]).toBeLessThan(Math.min(...mouth.map(([x]) => x)))
      expect(anthelix[0]).toBeGreaterThan(Math.max(...mouth.map(([x]) => x)))
      expect(Math.abs(tragus[1] - anthelix[1])).toBeLessThan(90)
    })

    it('has a bony meatus shorter than a quarter of the horizontal part', () => {
      const roof = across(species, 'meatusRoof').map(([x]) => x)
      expect(Math.max(...roof) - Math.min(...roof)).toBeLessThan(lengthOf(centreLine(species, bend, 1)) / 4)
    })

    it('sets the drum oblique: top edge lateral, bottom edge medial, umbo drawn inwards, small flaccid part on top', () => {
      const [top, bottom] = [first(across(species, 'drumUpper')), last(across(species, 'drumLower'))]
      expect(top[0]).toBeLessThan(bottom[0])
      expect(top[1]).toBeLessThan(bottom[1])
      const umbo = first(across(species, 'malleus'))
      const onChord = top[0] + ((umbo[1] - top[1]) / (bottom[1] - top[1])) * (bottom[0] - top[0])
      expect(umbo[0]).toBeGreaterThan(onChord)
      expect(lengthOf(across(species, 'drumUpper'))).toBeLessThan(lengthOf(across(species, 'drumLower')) / 2)
    })

    it('closes the horizontal canal with the drum, edge to edge', () => {
      const { outer, inner } = canalOf(plateFacts[species].transverse)
      expect(distance(last(inner), first(across(species, 'drumUpper')))).toBeLessThan(1)
      expect(distance(last(outer), last(across(species, 'drumLower')))).toBeLessThan(1)
      expect(distance(last(outer), first(across(species, 'shell')))).toBeLessThan(1)
    })

    it('keeps the heads of the ossicles above the drum and brings the stapes to the oval window, above the round one', () => {
      expect(last(across(species, 'malleus'))[1]).toBeLessThan(first(across(species, 'drumUpper'))[1])
      const oval = mean(across(species, 'ovalWindow'))
      expect(distance(last(across(species, 'stapes')), oval)).toBeLessThan(15)
      expect(oval[1]).toBeLessThan(mean(across(species, 'roundWindow'))[1])
    })

    it('puts the bulla below and medial to the drum, never under the vertical canal, and the promontory on the medial wall', () => {
      const bulla = mean(across(species, 'shell'))
      const drum = mean(across(species, 'drumLower'))
      expect(bulla[0]).toBeGreaterThan(drum[0])
      expect(bulla[1]).toBeGreaterThan(drum[1])
      const vertical = centreLine(species, 0, bend).map(([x]) => x)
      expect(Math.min(...across(species, 'shell').map(([x]) => x))).toBeGreaterThan(Math.max(...vertical))
      expect(mean(across(species, 'promontory'))[0]).toBeGreaterThan(drum[0])
    })

    it('leads the nerve below the horizontal canal, clear of its cartilage, as a line behind the section', () => {
      const floor = Math.max(
        ...stretch(walls(canalOf(plateFacts[species].transverse), 25), bend + 0.1, 0.85).outer.map(([, y]) => y),
      )
      for (const [, y] of across(species, 'nerve').slice(3)) expect(y).toBeGreaterThan(floor)
      const trunk = draw({ species }).shapes.filter(({ structure }) => structure === 'facial-nerve')
      expect(trunk.length).toBeGreaterThan(0)
      expect(trunk.every(({ stroke }) => stroke === 'nerve-behind')).toBe(true)
    })

    it('follows the vertical canal with the stem of the T, outside the skin', () => {
      const skin = sampled(across(species, 'skin'), 8)
      for (const [x, y] of across(species, 'stemCut').slice(1)) {
        const near = skin.reduce((best, point) => (Math.abs(point[1] - y) < Math.abs(best[1] - y) ? point : best))
        expect(x).toBeLessThan(near[0])
        expect(near[0] - x).toBeLessThan(30)
      }
    })

    it('opens the bulla from the floor of the meatus ventrally, and leaves the dorsomedial wall alone', () => {
      const scene = draw({
        species,
        surgery: { kind: 'planned', incision: 'T-shaped', canal: 'taken-away', bulla: 'opened' },
      })
      const at = (structure: StructureId) =>
        mean(scene.shapes.filter((shape) => shape.structure === structure).flatMap(({ path }) => cornersOf(path)))
      const [opening, alone] = [at('bulla-opening'), at('leave-alone')]
      expect(opening[1]).toBeGreaterThan(alone[1])
      expect(opening[0]).toBeLessThan(alone[0])
      const wedge = across(species, 'leaveAlone')
      expect(across(species, 'bullaCut').some((point) => inside(point, wedge))).toBe(false)
    })

    it('leaves no opening and no canal afterwards, and keeps flap, nerve, promontory and inner ear', () => {
      const scene = draw({
        species,
        surgery: { kind: 'done', incision: 'T-shaped', canal: 'taken-away', bulla: 'opened' },
      })
      const canal = scene.shapes.filter(
        ({ structure }) => structure === 'vertical-canal' || structure === 'horizontal-canal',
      )
      expect(canal.every(({ stroke, fill }) => stroke === 'removed' && fill === null)).toBe(true)
      const left = new Set(scene.shapes.map(({ structure }) => structure))
      for (const gone of ['drum', 'cartilage', 'annular-cartilage', 'tragus'] as const)
        expect(left.has(gone)).toBe(false)
      for (const kept of [
        'flap',
        'facial-nerve',
        'promontory',
        'inner-ear',
        'ossicles',
        'auditory-tube',
        'scar',
      ] as const)
        expect(left.has(kept)).toBe(true)
    })
  },
)

describe('the rooms of the bulla', () => {
  it('are one in the dog, with a ridge under a fifth of its width', () => {
    const { rooms } = plateFacts.dog.transverse
    if (rooms.kind !== 'one') throw new Error('The bulla of the dog is one room.')
    const shell = across('dog', 'shell').map(([x]) => x)
    const ridge = pointsOf(rooms.ridge.value).map(([x]) => x)
    expect(Math.max(...ridge) - Math.min(...ridge)).toBeLessThan((Math.max(...shell) - Math.min(...shell)) / 5)
  })

  it('are two in the cat: the smaller one dorsolateral, the larger one ventromedial', () => {
    const { rooms } = plateFacts.cat.transverse
    if (rooms.kind !== 'two') throw new Error('The bulla of the cat has two rooms.')
    const area = (points: readonly Point[]) =>
      Math.abs(
        points.reduce((sum, [x, y], i) => {
          const [a, b] = points[(i + 1) % points.length] ?? [x, y]
          return sum + x * b - a * y
        }, 0) / 2,
      )
    const [upper, lower] = [pointsOf(rooms.upper.value), pointsOf(rooms.lower.value)]
    expect(area(upper)).toBeLessThan(area(lower))
    expect(mean(upper)[0]).toBeLessThan(mean(lower)[0])
    expect(mean(upper)[1]).toBeLessThan(mean(lower)[1])
    for (const point of upper) expect(inside(point, lower)).toBe(false)
  })
})

describe.each(speciesList)('the lateral plate of the %s (LEFT, nose to the left)', (species) => {
  const meatus = first(aside(species, 'meatus'))

  it('lets the facial nerve leave caudal to the meatus with the ridge between, and pass below it', () => {
    const foramen = first(aside(species, 'foramen'))
    const ridge = mean(aside(species, 'ridge'))
    expect(foramen[0]).toBeGreaterThan(ridge[0])
    expect(ridge[0]).toBeGreaterThan(meatus[0])
    expect(distance(first(aside(species, 'nerve')), foramen)).toBeLessThan(1)
    const below = aside(species, 'nerve').filter(([x]) => Math.abs(x - meatus[0]) < 30)
    for (const [, y] of below) expect(y).toBeGreaterThan(meatus[1] + 42)
    expect(below.length).toBeGreaterThan(0)
  })

  it('raises the branch to the eyelids in front of the canal', () => {
    const canal = Math.min(...aside(species, 'verticalLeft').map(([x]) => x))
    for (const [x] of aside(species, 'nerveToLids')) expect(x).toBeLessThan(canal)
    expect(last(aside(species, 'nerveToLids'))[1]).toBeLessThan(meatus[1])
  })

  it('has the vein and the jaw joint rostral to the meatus, and the order nose to tail right at its height', () => {
    const order = [
      aside(species, 'jaw'),
      aside(species, 'jawJoint'),
      aside(species, 'veinForamen'),
      aside(species, 'meatus'),
      aside(species, 'ridge'),
      aside(species, 'foramen'),
      aside(species, 'atlas'),
    ].map((line) => mean(line)[0])
    expect(order).toEqual([...order].sort((a, b) => a - b))
  })

  it('is the other way round for the RIGHT ear: nerve foramen to the left of the vein', () => {
    const right = { species, view: 'lateral', side: 'RIGHT' } as const
    expect(spotOf(right, 'nerve-foramen')[0]).toBeLessThan(spotOf(right, 'retroglenoid-vein')[0])
    expect(draw(right).leftward).toBe('tail')
  })

  it('puts the tragus below the opening, the antitragus caudal to it, and the arteries where they run', () => {
    const opening = mean(aside(species, 'opening'))
    expect(mean(aside(species, 'tragus'))[1]).toBeGreaterThan(opening[1])
    expect(mean(aside(species, 'antitragus'))[0]).toBeGreaterThan(mean(aside(species, 'tragus'))[0])
    expect(last(aside(species, 'templeArtery'))[0]).toBeLessThan(opening[0])
    expect(
      aside(species, 'flapArtery')
        .slice(2, 5)
        .every(([x]) => x > opening[0]),
    ).toBe(true)
  })

  it('lays the anthelix above the opening, dorsal to the circular cut that stays below it', () => {
    const anthelix = draw({ species, view: 'lateral', side: 'LEFT' })
      .shapes.filter(({ structure }) => structure === 'anthelix')
      .flatMap(({ path }) => cornersOf(path))
    const middleOf = anthelix.filter(([x]) => Math.abs(x - mean(aside(species, 'opening'))[0]) < 25)
    expect(middleOf.length).toBeGreaterThan(0)
    const cut = Math.min(...aside(species, 'cutCircle').map(([, y]) => y))
    for (const [, y] of middleOf) expect(y).toBeLessThan(cut)
  })

  it('sets the T on the lateral lip: junction at the top of the stem, stem on the canal, end below the horizontal canal', () => {
    const stem = aside(species, 'cutStem')
    const bar = aside(species, 'cutBar')
    const [low, high] = [Math.min(...bar.map(([, y]) => y)), Math.max(...bar.map(([, y]) => y))]
    expect(first(stem)[1]).toBeGreaterThanOrEqual(low - 5)
    expect(first(stem)[1]).toBeLessThanOrEqual(high)
    const canal = [...aside(species, 'verticalLeft'), ...[...aside(species, 'verticalRight')].reverse()]
    for (const point of stem.slice(1, -1)) expect(inside(point, canal)).toBe(true)
    expect(last(stem)[1]).toBeGreaterThan(meatus[1])
  })

  it('opens the bulla ventrally and caudally, not rostrally, and within its outline', () => {
    const bulla = aside(species, 'bulla')
    const cut = aside(species, 'bullaCut')
    const [rostral, caudal] = [Math.min(...bulla.map(([x]) => x)), Math.max(...bulla.map(([x]) => x))]
    const [from, to] = [Math.min(...cut.map(([x]) => x)), Math.max(...cut.map(([x]) => x))]
    expect(from - rostral).toBeGreaterThan(2 * (caudal - to))
    expect(mean(cut)[0]).toBeGreaterThan(mean(aside(species, 'leaveAlone'))[0])
    expect(Math.min(...cut.map(([, y]) => y))).toBeGreaterThan(meatus[1])
  })
})

describe('the sizes of the master drawings, in their own millimetres', () => {
  const inMillimetres = (species: 'dog' | 'cat', from: number, to: number) =>
    lengthOf(centreLine(species, from, to)) / plateFacts[species].transverse.unitsPerMillimetre.value
  const { bend: dogBend } = plateFacts.dog.transverse.parts.value
  const { bend: catBend } = plateFacts.cat.transverse.parts.value

  it('give the dog a canal within one deviation of 5.3 ± 1.0 cm (histology of the canal 2009, 40 ears)', () => {
    const { mean: published, deviation } = earDimensions.dogCanal.value
    expect(Math.abs(inMillimetres('dog', 0, 1) - published.value.toNumber())).toBeLessThan(deviation.value.toNumber())
  })

  it('give the vertical part of the dog about an inch (Cole 2009)', () => {
    const published = earDimensions.dogVertical.value.value.toNumber()
    expect(Math.abs(inMillimetres('dog', 0, dogBend) - published)).toBeLessThan(5)
  })

  it('give the dog a ring within two deviations of 1.2 ± 0.2 cm (histology of the canal 2009)', () => {
    const { annularStart, annularEnd } = plateFacts.dog.transverse.parts.value
    const { mean: published, deviation } = earDimensions.dogAnnular.value
    const drawn = inMillimetres('dog', annularStart, annularEnd)
    expect(Math.abs(drawn - published.value.toNumber())).toBeLessThan(2 * deviation.value.toNumber())
  })

  it('give the horizontal part of the cat about 1 cm of cartilage, bone and skin to the middle of the drum (icatcare.org)', () => {
    const published = earDimensions.catHorizontal.value.value.toNumber()
    expect(Math.abs(inMillimetres('cat', catBend, 1) - published)).toBeLessThan(6)
  })

  it('give the wall of the cat’s bulla 1.0 mm (CT of cats 2024)', () => {
    const { wall, unitsPerMillimetre } = plateFacts.cat.transverse
    expect(wall.value / unitsPerMillimetre.value).toBeCloseTo(earDimensions.catBullaWall.value.mean.value.toNumber(), 1)
  })
})
