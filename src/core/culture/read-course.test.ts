import { describe, expect, it } from 'vitest'
import { enrofloxacin } from '#content/formulary/enrofloxacin.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { emptyCourse, readCourse } from './read-course.ts'

const row = enrofloxacin.doses[0]
if (!row) throw new Error('The formulary holds no row of enrofloxacin.')
const asked = { id: 'course', drug: 'enrofloxacin', use: 'antibiotic_course', route: 'PO' } as const

const tablets: BodyOf<'shelf-item'> = {
  item: 'enrofloxacin-50',
  drug: 'enrofloxacin',
  label: 'Enrofloxacin tablet 50 mg',
  form: 'tablet',
  strength: { value: '50', unit: 'mg/{tablet}' },
  divides: 'halves',
  expires: null,
  outSince: null,
  controlled: 'no',
}
const read = (draft: Partial<typeof emptyCourse>) =>
  readCourse({ ...emptyCourse, ...draft }, asked, row, [tablets], '.')

describe('a course as it is typed', () => {
  it('is nothing, and no fault, while nothing is typed', () => {
    expect(read({})).toEqual({ line: null, refusals: {} })
  })

  it('is read with the tablet of the shelf and the gap that somebody chose', () => {
    const { line } = read({ dose: '5 mg/kg', days: '14', every: '24', item: 'enrofloxacin-50' })
    expect(line?.dose?.toString()).toBe('5 mg/kg')
    expect(line?.tablet?.strength.toString()).toBe('50 mg')
    expect([line?.days, line?.every?.toString()]).toEqual([14, '24 h'])
  })

  it('never guesses a unit, and says of each field what is wrong', () => {
    expect(read({ dose: '5', days: 'two weeks', every: '0' })).toEqual({
      line: null,
      refusals: {
        dose: expect.objectContaining({ because: expect.stringContaining('unit') }),
        days: expect.objectContaining({ because: 'not-a-whole-number' }),
        every: expect.objectContaining({ because: 'out-of-range' }),
      },
    })
  })
})
