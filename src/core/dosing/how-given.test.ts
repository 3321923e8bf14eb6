import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import type { Dose, Stock } from '#core/formulary/drug.ts'
import { plannedLine } from '#core/journal/kinds/planned-line.ts'
import { quantity } from '#core/units/quantity.ts'
import { askedOfBody } from './asked-of-body.ts'
import { doseLines } from './dose-lines.ts'
import { isDrawnOtherwise, plannedBody } from './planned-body.ts'
import type { DoseLine, DoseRequest, DrawnLine, PlannedLine } from './request.ts'

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }
const dose = (value: string, unit: Dose['unit']) => quantity(value, unit) as unknown as Dose
const stock = (value: string) => quantity(value, 'mg/mL') as Stock

/** One line of every way to give a drug, in a dog of 40 kg that allows it. */
const lines: readonly PlannedLine[] = [
  {
    id: 'lidocaine',
    drug: 'lidocaine',
    use: 'cri',
    route: 'IV',
    dose: dose('50', 'ug/kg/min'),
    stock: stock('20'),
    container: {
      kind: 'syringe',
      name: 'syringe 1',
      volume: quantity('60', 'mL'),
      rate: quantity('20', 'mL/h'),
      fluid: 'sodium-chloride-0.9',
    },
    loading: { dose: dose('1', 'mg/kg'), over: quantity('5', 'min') },
    over: quantity('120', 'min'),
  },
  {
    id: 'tablets',
    drug: 'amoxicillin-clavulanate',
    use: 'antibiotic_course',
    route: 'PO',
    dose: dose('12.5', 'mg/kg'),
    tablet: { strength: quantity('500', 'mg'), divides: 'halves' },
    every: quantity('12', 'h'),
    days: 7,
  },
]

function judge(weight: string, asked = lines): readonly DoseLine[] {
  const animal = { species: 'dog', weight: quantity(weight, 'kg'), weightIs: 'measured', conditions: [] } as const
  const request: DoseRequest = { animal, given: [], lines: asked }
  return doseLines(request, knowledge).lines
}

function drawn(line: DoseLine | undefined): DrawnLine {
  if (line?.verdict === 'refused' || !line) throw new Error(line?.findings.map(({ code }) => code).join(', '))
  return line
}

const around = { because: 'Chosen.', plan: null, shelfItem: null }
const kept = lines.map((asked, index) =>
  plannedBody(drawn(judge('40')[index]), { ...around, asked, weight: quantity('40', 'kg') }),
)

describe('a line with a bag, a loading dose or tablets', () => {
  it('is kept whole and read back as the question it answered', () => {
    for (const [index, body] of kept.entries()) {
      expect(plannedLine.body.parse(body)).toEqual(body)
      expect(askedOfBody(body)).toEqual(lines[index])
    }
  })

  it('keeps what is drawn into the syringe, its label, the loading dose and what is handed out', () => {
    const [infusion, tablets] = kept
    // 50 µg/kg/min × 40 kg × 60 min = 120 mg/h; 60 mL at 20 mL/h last 3 h: 360 mg = 18 mL of 20 mg/mL, 42 mL of fluid.
    expect(infusion).toMatchObject({
      drawn: { value: '18', unit: 'mL' },
      worked: {
        rate: { value: '20', unit: 'mL/h' },
        label: { value: '360', unit: 'mg' },
        fluid: { value: '42', unit: 'mL' },
        // 1 mg/kg × 40 kg = 40 mg = 2 mL of 20 mg/mL.
        loading: { amount: { value: '40', unit: 'mg' }, drawn: { value: '2', unit: 'mL' } },
      },
    })
    // 12.5 mg/kg × 40 kg = 500 mg: one tablet, twice a day for 7 days.
    expect(tablets?.worked).toMatchObject({
      tablets: { value: '1', unit: '{tablet}' },
      dispense: { value: '14', unit: '{tablet}' },
    })
  })

  it('is the same when it is asked again, and another once the animal weighs something else', () => {
    const again = judge(
      '40',
      kept.flatMap((body) => askedOfBody(body) ?? []),
    )
    const lighter = judge(
      '30',
      kept.flatMap((body) => askedOfBody(body) ?? []),
    )
    kept.forEach((body, index) => {
      expect(isDrawnOtherwise(body, drawn(again[index])), body.line).toBe(false)
      expect(isDrawnOtherwise(body, lighter[index] as DoseLine), body.line).toBe(true)
    })
  })

  it('is another when only its loading dose is', () => {
    const [asked] = lines
    const other = { ...asked, loading: { dose: dose('1.5', 'mg/kg') } } as PlannedLine
    expect(isDrawnOtherwise(kept[0] as (typeof kept)[0], drawn(judge('40', [other])[0]))).toBe(true)
  })
})

describe('a line of version 1', () => {
  it('reads as one of which nothing more was said, and is not old for that', () => {
    const { shelfItem: _, how: __, deficit: ___, blood: ____, worked: _____, ...older } = plannedLine.example
    expect(plannedLine.upcasts[1]?.(older)).toEqual(plannedLine.example)
    const asked: PlannedLine = {
      id: 'block',
      drug: 'bupivacaine',
      use: 'local_block',
      route: 'infiltration',
      dose: dose('1', 'mg/kg'),
      stock: stock('5'),
    }
    expect(isDrawnOtherwise(plannedLine.example, drawn(judge('8.2', [asked])[0]))).toBe(false)
  })
})
