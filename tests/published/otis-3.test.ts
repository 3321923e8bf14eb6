/**
 * Nuttall T, Bensignor E. A pilot study to develop an objective clinical score for canine otitis externa.
 * Vet Dermatol 2014;25:530-e92, abstract: four signs 0–3; ≥ 4 affected (sensitivity 91.1 %, specificity 100 %);
 * ≤ 3 clinical success (100 %, 91.9 %).
 */
import { describe, expect, it } from 'vitest'
import { otis3CutOffs } from '#content/scores/otis-3.ts'
import { sources } from '#content/sources/index.ts'
import { type Otis3Findings, otis3Signs, otis3Total, readOtis3 } from '#core/workup/otis3.ts'

const all = (grade: number): Otis3Findings => ({ erythema: grade, swelling: grade, erosion: grade, exudate: grade })

describe('the OTIS-3 total', () => {
  it('runs from 0 to 12 and takes every value between', () => {
    const totals = new Set<number>()
    const grades = [0, 1, 2, 3]
    for (const erythema of grades)
      for (const swelling of grades)
        for (const erosion of grades)
          for (const exudate of grades) {
            const total = otis3Total({ erythema, swelling, erosion, exudate })
            expect(total).toEqual({ kind: 'answer', answer: erythema + swelling + erosion + exudate })
            if (total.kind === 'answer') totals.add(total.answer)
          }
    expect([...totals].sort((a, b) => a - b)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])
  })

  it.each(otis3Signs)('is unknown when %s was not assessed, even if the rest is severe', (sign) => {
    expect(otis3Total({ ...all(3), [sign]: null })).toEqual({
      kind: 'refusal',
      refusal: { because: 'sign-not-assessed', signs: [sign] },
    })
  })

  it('names every sign that was not assessed', () => {
    expect(otis3Total({ ...all(1), erosion: null, exudate: null })).toMatchObject({
      refusal: { because: 'sign-not-assessed', signs: ['erosion', 'exudate'] },
    })
  })

  it.each([-1, 4, 1.5, Number.NaN])('refuses a grade of %s', (value) => {
    expect(otis3Total({ ...all(1), swelling: value })).toEqual({
      kind: 'refusal',
      refusal: { because: 'sign-out-of-range', sign: 'swelling', value },
    })
  })
})

describe('the published lines', () => {
  const read = (total: number) => {
    const reading = readOtis3(total, 'dog', otis3CutOffs)
    if (reading.kind === 'refusal') throw new Error(reading.refusal.because)
    return reading.answer
  }

  it('4 or more is as in affected ears, 3 or less as in clinical success', () => {
    expect([0, 3, 4, 12].map((total) => read(total).affected)).toEqual([false, false, true, true])
    expect([0, 3, 4, 12].map((total) => read(total).success)).toEqual([true, true, false, false])
  })

  it('carry the sensitivity and specificity of the abstract', () => {
    expect(otis3CutOffs.affected.value).toMatchObject({ total: 4, sensitivity: 0.911, specificity: 1 })
    expect(otis3CutOffs.success.value).toMatchObject({ total: 3, sensitivity: 1, specificity: 0.919 })
  })

  it('name their source', () => {
    expect(read(4).sources).toEqual(['nuttall-bensignor-2014'])
    expect(sources.map(({ id }) => id)).toContain('nuttall-bensignor-2014')
  })

  it('were drawn in dogs, so that a cat has none', () => {
    expect(readOtis3(6, 'cat', otis3CutOffs)).toEqual({
      kind: 'refusal',
      refusal: { because: 'no-cut-off-for-species', species: 'cat' },
    })
  })
})
