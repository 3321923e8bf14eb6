import { describe, expect, it } from 'vitest'
import { bloodInSwabs as facts } from '#content/protocols/blood-in-swabs.ts'
import { bloodMarks } from '#content/protocols/blood-marks.ts'
import { bloodPerKg } from '#content/protocols/blood-per-kg.ts'
import { Decimal, quantity } from '#core/units/quantity.ts'
import { bloodLoss, type Lavage, type LossMeasures, totalLoss } from './blood-loss.ts'
import { firedMarks, lossAtMarks, lossFractions } from './blood-marks.ts'
import type { Swabs } from './blood-swabs.ts'
import { allowableLoss, bloodVolume } from './blood-volume.ts'

const mL = (value: string) => quantity(value, 'mL')
const g = (value: string) => quantity(value, 'g')
const weighed = (dry: string, wet: string, saline: string): Swabs => ({
  kind: 'weighed',
  dry: g(dry),
  wet: g(wet),
  saline: mL(saline),
})

function loss(suction: string, lavage: Lavage, swabs: readonly Swabs[] = []) {
  return bloodLoss({ suction: mL(suction), lavage, swabs } satisfies LossMeasures, facts)
}

function span(suction: string, lavage: Lavage, swabs: readonly Swabs[] = []) {
  const result = loss(suction, lavage, swabs)
  if (result.kind === 'refusal') throw new Error(result.refusal.because)
  return result.answer
}

const ends = (suction: string, lavage: Lavage, swabs: readonly Swabs[] = []) => {
  const { atLeast, atMost } = span(suction, lavage, swabs)
  return `${atLeast} – ${atMost}`
}
const because = (suction: string, lavage: Lavage, swabs: readonly Swabs[] = []) => {
  const result = loss(suction, lavage, swabs)
  return result.kind === 'refusal' ? result.refusal.because : 'answered'
}

describe('blood loss as a span', () => {
  it('is one number when no lavage was used: jar plus swabs (Vitello 2015, Vet Surg 2006: a gram is a millilitre)', () => {
    expect(ends('50', { kind: 'none' }, [weighed('10', '34', '4')])).toBe('70 mL – 70 mL')
  })

  it('subtracts only the lavage that was found again', () => {
    const lavage = { kind: 'recovered', given: mL('300'), recovered: mL('250') } as const
    expect(ends('350', lavage, [weighed('10', '30', '0')])).toBe('120 mL – 120 mL')
  })

  it('spans from all lavage to none of it when nobody measured', () => {
    const lavage = { kind: 'not-measured', given: mL('300') } as const
    expect(ends('350', lavage, [weighed('10', '30', '0')])).toBe('70 mL – 370 mL')
  })

  it('starts at zero, not below, when more went in than came back', () => {
    expect(ends('100', { kind: 'not-measured', given: mL('300') })).toBe('0 mL – 100 mL')
  })

  it('reads the jar by its packed cell volume: 200 mL at 10 % in a patient at 40 % are 50 mL', () => {
    const lavage = { kind: 'jar-pcv', jar: new Decimal(10), patient: new Decimal(40) } as const
    expect(ends('200', lavage)).toBe('50 mL – 50 mL')
  })

  it('widens by swabs that were only counted: two soaked gauzes are 20–30 mL, and says so', () => {
    const counted = { kind: 'counted', swab: 'gauze-10-cm', soaked: 2 } as const
    expect(ends('50', { kind: 'none' }, [counted])).toBe('70 mL – 80 mL')
    expect(span('50', { kind: 'none' }, [counted]).estimated).toBe(true)
    expect(span('50', { kind: 'none' }).estimated).toBe(false)
  })

  it('refuses a negative result and names what contradicts', () => {
    expect(because('50', { kind: 'none' }, [weighed('10', '8', '0')])).toBe('wet-below-dry')
    expect(because('50', { kind: 'none' }, [weighed('10', '12', '4')])).toBe('saline-above-weight')
    const more = { kind: 'recovered', given: mL('300'), recovered: mL('200') } as const
    expect(because('150', more)).toBe('recovered-more-than-jar')
    expect(because('350', { ...more, recovered: mL('301') })).toBe('recovered-more-than-given')
    expect(because('-1', { kind: 'none' })).toBe('negative-measure')
    expect(because('50', { kind: 'not-measured', given: mL('-1') })).toBe('negative-measure')
    expect(because('50', { kind: 'jar-pcv', jar: new Decimal(50), patient: new Decimal(40) })).toBe('jar-above-patient')
    expect(because('50', { kind: 'none' }, [{ kind: 'counted', swab: 'lap-sponge', soaked: 1.5 }])).toBe(
      'count-not-whole',
    )
  })

  it('adds losses of one operation, and the least certain of them speaks for the sum', () => {
    const sum = totalLoss([span('50', { kind: 'none' }), span('100', { kind: 'not-measured', given: mL('80') })])
    expect(`${sum?.atLeast} – ${sum?.atMost} ${sum?.lavage}`).toBe('70 mL – 150 mL not-measured')
    expect(totalLoss([])).toBeUndefined()
  })
})

describe('marks of blood loss', () => {
  const blood = mL('1000')

  it('fire on the measured estimate', () => {
    const fired = firedMarks(span('160', { kind: 'none' }), blood, bloodMarks)
    expect(fired.map(({ mark, by }) => `${mark.value.code} ${by}`)).toEqual(['inform measured', 'replace measured'])
  })

  it('fire on the upper end when the lavage was not measured', () => {
    const fired = firedMarks(span('350', { kind: 'not-measured', given: mL('250') }), blood, bloodMarks)
    expect(fired.map(({ mark, by }) => `${mark.value.code} ${by}`)).toEqual([
      'inform measured',
      'replace upper-end',
      'transfusion-ready upper-end',
      'critical upper-end',
    ])
  })

  it('stay silent below ten per cent, and fire exactly at it', () => {
    expect(firedMarks(span('99.9', { kind: 'none' }), blood, bloodMarks)).toEqual([])
    expect(firedMarks(span('100', { kind: 'none' }), blood, bloodMarks)).toHaveLength(1)
  })

  it('say the loss as a part of the blood volume', () => {
    const parts = lossFractions(span('350', { kind: 'not-measured', given: mL('250') }), blood)
    expect([parts.atLeast.toString(), parts.atMost.toString()]).toEqual(['0.1', '0.35'])
  })
})

describe('blood volume', () => {
  it('is 2880 mL in a 32 kg dog, and 15 % of it 432 mL (transfusion refresher for students)', () => {
    const { counted, low } = bloodVolume(quantity('32', 'kg'), bloodPerKg.dog)
    expect([counted.toString(), low.toString()]).toEqual(['2880 mL', '2560 mL'])
    expect(lossAtMarks(counted, bloodMarks).map(({ volume }) => volume.toString())).toEqual([
      '288 mL',
      '432 mL',
      '576 mL',
      '864 mL',
    ])
  })

  it('is 246 mL in a 4.1 kg cat, quoted from 205 to 270.6', () => {
    const { counted, low, high } = bloodVolume(quantity('4.1', 'kg'), bloodPerKg.cat)
    expect([counted, low, high].map(String)).toEqual(['246 mL', '205 mL', '270.6 mL'])
  })
})

describe('allowable blood loss', () => {
  const human = { start: new Decimal(45), lowest: new Decimal(30) }

  it('is 1300 mL for 3900 mL from 45 to 30 %, divided by the start (worked page, human example)', () => {
    const result = allowableLoss(mL('3900'), { ...human, dividedBy: 'start' })
    expect(result.kind === 'answer' && result.answer.volume.toString()).toBe('1300 mL')
  })

  it('is 1560 mL by the mean of both, and the answer names which', () => {
    const result = allowableLoss(mL('3900'), { ...human, dividedBy: 'mean' })
    expect(result.kind === 'answer' && `${result.answer.volume} ${result.answer.dividedBy}`).toBe('1560 mL mean')
  })

  it('is refused when the lowest lies above the start or a value is not above zero', () => {
    const turned = allowableLoss(mL('3900'), { start: new Decimal(20), lowest: new Decimal(30), dividedBy: 'start' })
    expect(turned.kind === 'refusal' && turned.refusal.because).toBe('lowest-above-start')
    const zero = allowableLoss(mL('3900'), { start: new Decimal(0), lowest: new Decimal(0), dividedBy: 'mean' })
    expect(zero.kind === 'refusal' && zero.refusal.because).toBe('haematocrit-not-positive')
  })
})
