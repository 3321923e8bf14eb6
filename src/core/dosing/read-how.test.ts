import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { drugById } from '#core/formulary/drug.ts'
import { draftOfHow, nothingSaid, questionsOf, readHowDraft } from './read-how.ts'

const point = { decimalMark: '.', line: 'infusion' } as const

function rowOf(id: string, use: string, route: string) {
  const drug = drugById(formulary, id)
  const row = drug?.doses.find((one) => one.species === 'dog' && one.use === use && one.routes.some((r) => r === route))
  if (!drug || !row) throw new Error(`The formulary has no ${use} of ${id}.`)
  return { drug, row }
}

const lidocaine = rowOf('lidocaine', 'cri', 'IV')
const tablets = rowOf('amoxicillin-clavulanate', 'antibiotic_course', 'PO')

describe('how a dose is given, as it is typed', () => {
  it('is asked only where it means something', () => {
    expect(questionsOf(lidocaine.drug, lidocaine.row, true)).toEqual(['over', 'set', 'mixed', 'container', 'loading'])
    expect(questionsOf(tablets.drug, tablets.row, true)).toEqual(['course', 'bottle'])
    const blood = rowOf('packed-red-cells', 'blood_product', 'IV')
    expect(questionsOf(blood.drug, blood.row, true)).toContain('blood')
    expect(questionsOf(blood.drug, blood.row, false)).not.toContain('blood')
  })

  it('is nothing when nothing is typed, and nothing is filled in', () => {
    const { drug, row } = lidocaine
    expect(readHowDraft(nothingSaid, row, questionsOf(drug, row, true), point)).toEqual({ kind: 'answer', answer: {} })
  })

  it('is typed back as it was read, with a point and with a comma', () => {
    const { drug, row } = lidocaine
    const questions = questionsOf(drug, row, true)
    for (const decimalMark of ['.', ','] as const) {
      const draft = {
        ...nothingSaid,
        runsFrom: 'syringe',
        volume: '60 mL',
        rate: `2${decimalMark}5 mL/h`,
        loading: '1 mg/kg',
        loadingOver: '5 min',
      } as const
      const read = readHowDraft(draft, row, questions, { decimalMark, line: 'infusion' })
      if (read.kind === 'refusal') throw new Error(JSON.stringify(read.refusal))
      expect(read.answer.container?.name).toBe('infusion')
      expect(draftOfHow(read.answer, 'infusion', { decimalMark })).toEqual(draft)
    }
  })

  it('refuses a bag without volume or rate, a rate without unit, and half a goal, each at its field', () => {
    const { drug, row } = lidocaine
    const bag = { ...nothingSaid, runsFrom: 'bag', rate: '20' } as const
    const read = readHowDraft(bag, row, questionsOf(drug, row, true), point)
    expect(read.kind === 'refusal' && read.refusal.map(({ at, because }) => `${at} ${because}`)).toEqual([
      'volume quantity-empty',
      'rate quantity-no-unit',
    ])
    const blood = rowOf('whole-blood', 'blood_product', 'IV')
    const half = readHowDraft({ ...nothingSaid, pcvNow: '15' }, blood.row, ['blood'], point)
    expect(half.kind === 'refusal' && half.refusal.map(({ at }) => at)).toEqual(['pcvAim', 'pcvDonor'])
  })

  it('leaves out answers to questions of the drug that stood there before', () => {
    const read = readHowDraft({ ...nothingSaid, runsFrom: 'bag', loading: 'x' }, tablets.row, ['course'], point)
    expect(read).toEqual({ kind: 'answer', answer: {} })
  })
})
