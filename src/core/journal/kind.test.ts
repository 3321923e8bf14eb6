import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { readEntry } from './accept.ts'
import type { Json } from './canonical.ts'
import { entryMaker } from './entries-for-tests.ts'
import { defineKind, upcast } from './kind.ts'
import { earFindings } from './kinds/ear-findings.ts'
import { imaging } from './kinds/imaging.ts'
import { kinds } from './kinds/index.ts'
import { observation } from './kinds/observation.ts'
import { operationSummary } from './kinds/operation-summary.ts'
import { pauseItem } from './kinds/pause-item.ts'

/** A kind that has lived: pounds in version 1, kilograms without a way of weighing in 2, both in 3. */
const weighed = defineKind({
  name: 'weighed',
  version: 3,
  subjects: ['animal'],
  body: z.strictObject({ kg: z.string(), how: z.enum(['scale', 'unknown']) }),
  upcasts: {
    1: (older: Json) => ({ kg: String(Number((older as { lb: string }).lb) / 2) }),
    2: (older: Json) => ({ ...(older as { kg: string }), how: 'unknown' }),
  },
  example: { kg: '12', how: 'scale' },
})

describe('a kind of entry', () => {
  it('reads the body of every older version through its upcasters, for ever', () => {
    expect(upcast(weighed, 1, { lb: '24' })).toEqual({ kg: '12', how: 'unknown' })
    expect(upcast(weighed, 2, { kg: '12' })).toEqual({ kg: '12', how: 'unknown' })
    expect(upcast(weighed, 3, { kg: '12', how: 'scale' })).toEqual({ kg: '12', how: 'scale' })
  })

  it('reads a summary of an operation that version 1 wrote: nobody was asked for the main reason then', () => {
    const { mainReason: _, ...first } = operationSummary.example as Record<string, Json>
    expect(upcast(operationSummary, 1, first)).toEqual({ ...first, mainReason: null })
  })

  it('reads ear findings and imaging that version 1 wrote: place of a mass and carriage were not asked then', () => {
    const { massPlace: _place, massSize: _size, flapCarriage: _flap, ...first } = earFindings.example
    const look = upcast(earFindings, 1, first as unknown as Json)
    expect(earFindings.body.parse(look)).toEqual({
      ...earFindings.example,
      massPlace: 'not-assessed',
      massSize: 'not-assessed',
      flapCarriage: 'not-assessed',
    })
    const side = { bulla: 'filled', bullaWall: 'thick', canalMineral: 'yes', mass: 'yes' }
    const scan = upcast(imaging, 1, { ...(imaging.example as unknown as { text: string }), LEFT: side, RIGHT: null })
    expect(imaging.body.parse(scan)).toMatchObject({
      LEFT: { ...side, massPlace: 'not-reported', massSize: 'not-reported' },
      RIGHT: null,
    })
  })

  it('reads an item of a spoken pause that version 1 wrote: who led it was not asked then', () => {
    const { ledBy: _led, ...first } = pauseItem.example
    expect(pauseItem.body.parse(upcast(pauseItem, 1, first))).toEqual({ ...pauseItem.example, ledBy: null })
  })

  it('reads an observation of version 1: nobody said whose eye blinked, nor why nothing was measured', () => {
    const { side, unmeasured, ...first } = observation.example
    expect([side, unmeasured]).toEqual([null, null])
    expect(observation.body.parse(upcast(observation, 1, first as unknown as Json))).toEqual(observation.example)
  })

  it('does not pretend to read a version from the future', () => {
    expect(upcast(weighed, 4, { stones: '2' })).toBeUndefined()
  })

  it('cannot be written down without every upcaster', () => {
    expect(() => defineKind({ ...weighed, upcasts: { 1: (older) => older }, naturalKey: () => undefined })).toThrow(
      'lacks the upcast from version 2',
    )
  })

  it.each(kinds)('$name has an example that fits its schema and nothing but whole numbers and text in it', (kind) => {
    expect(kind.body.safeParse(kind.example).success).toBe(true)
    expect(readEntry(entryMaker()({ kind: kind.name })).kind).toBe('answer')
    expect(kind.body.safeParse({ ...kind.example, surprise: 1 }).success).toBe(false)
  })

  it('refuses a body that does not fit, naming the field, and a subject it is not about', () => {
    const make = entryMaker()
    const wrong = {
      ...make({ kind: 'weight' }),
      body: { weight: { value: 12.5, unit: 'kg' }, typed: null, how: 'scale', bodyCondition: 5 },
    }
    expect(readEntry(wrong)).toMatchObject({ kind: 'refusal', refusal: { path: expect.stringMatching(/^body/) } })
    const pounds = {
      ...make({ kind: 'weight' }),
      body: { weight: { value: '27', unit: '[lb_av]' }, typed: null, how: 'scale', bodyCondition: 5 },
    }
    expect(readEntry(pounds)).toMatchObject({ refusal: { because: 'wrong-body', path: 'body.weight.unit' } })
    expect(readEntry(make({ kind: 'weight', subject: { kind: 'clinic' } }))).toMatchObject({
      refusal: { because: 'wrong-subject' },
    })
  })
})
