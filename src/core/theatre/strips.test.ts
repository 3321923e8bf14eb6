import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { observation } from '#core/journal/kinds/observation.ts'
import { svgText } from '#core/plate/svg-node.ts'
import { quantity } from '#core/units/quantity.ts'
import { drawStrips, type StripLook } from './draw-strips.ts'
import { axisTimes } from './strip-times.ts'
import { stripsOf } from './strips.ts'

type Value = BodyOf<'observation'>['values'][number]
const every = quantity('5', 'min')
const full = (time: string) => `2026-01-10T${time}:00.000Z`

function heartsAt(...made: readonly (readonly [time: string, value: string, artefact?: true])[]) {
  const make = entryMaker()
  const entries = made.map(([time, value, artefact]) => {
    const heart: Value = {
      what: 'heart-rate',
      value: { value, unit: '/min' },
      method: null,
      artefact: artefact === true,
    }
    return make({ kind: 'observation', at: full(time), body: { ...observation.example, values: [heart] } })
  })
  return stripsOf(fold(entries).live('observation'), every)
}

const look: StripLook = {
  width: 360,
  font: 12,
  colours: { ink: 'ink', quiet: 'quiet', accent: 'accent' },
  zone: 'Europe/London',
  nameOf: ({ what }) => what,
}

describe('the strips of an anaesthetic', () => {
  it('join two points only where no gap lies between them', () => {
    const [strip] = heartsAt(['13:00', '90'], ['13:05', '92'], ['13:11', '94'], ['13:16', '96'])
    expect(strip?.runs.map((run) => run.map(({ value }) => String(value)))).toEqual([
      ['90', '92'],
      ['94', '96'],
    ])
    expect([String(strip?.lowest), String(strip?.highest)]).toEqual(['90', '96'])
  })

  it('show an artefact and leave it out of every line', () => {
    const [strip] = heartsAt(['13:00', '90'], ['13:03', '240', true], ['13:05', '92'])
    expect(strip?.runs.map((run) => run.map(({ value }) => String(value)))).toEqual([['90', '92']])
    expect(strip?.points.map(({ artefact }) => artefact)).toEqual([false, true, false])
    // It does not flatten what is true either.
    expect(String(strip?.highest)).toBe('92')
    const svg =
      drawStrips(
        [strip].flatMap((one) => one ?? []),
        [],
        [],
        look,
      )?.nodes.map(svgText) ?? []
    expect(svg.filter((one) => one.startsWith('<polyline'))).toHaveLength(1)
    expect(svg.filter((one) => one.includes('<circle') && one.includes('fill="none"'))).toHaveLength(1)
  })

  it('draw a gap as an empty band, events as ticks with words that do not touch, and clock times', () => {
    const strips = heartsAt(['13:00', '90'], ['13:30', '92'])
    const gaps = [{ at: full('13:00'), until: full('13:30'), minutes: 30 }]
    const events = [
      { at: full('13:10'), word: 'Incision' },
      { at: full('13:11'), word: 'Emergency: bleeding' },
      { at: full('13:12'), word: null },
    ]
    const svg = drawStrips(strips, gaps, events, look)?.nodes.map(svgText).join('\n') ?? ''
    expect(svg).toContain('<rect')
    expect(svg).not.toContain('<polyline')
    const lines = [...svg.matchAll(/y="([\d.]+)"[^>]*>(Incision|Emergency: bleeding)</g)].map(([, y]) => y)
    expect(new Set(lines).size).toBe(2)
    for (const time of ['13:00', '13:30']) expect(svg).toContain(`>${time}<`)
  })

  it('draw a single moment, and nothing where nothing was measured', () => {
    expect(drawStrips(heartsAt(['13:00', '90']), [], [], look)?.nodes.length).toBeGreaterThan(0)
    expect(drawStrips([], [], [], look)).toBeNull()
  })
})

describe('the times of an axis', () => {
  it('are full steps of the hour, no more than fit', () => {
    expect(axisTimes(full('13:04'), full('14:31'), 4)).toEqual([full('13:30'), full('14:00'), full('14:30')])
    expect(axisTimes(full('13:00'), full('13:10'), 4)).toEqual([full('13:00'), full('13:05'), full('13:10')])
  })
})
