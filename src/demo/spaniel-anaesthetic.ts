import type { Subject } from '#core/journal/entry.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { emptyLook } from '#core/theatre/empty-look.ts'
import type { Chart } from './chart.ts'
import { staff } from './practice.ts'

type Body = BodyOf<'observation'>

/** Time, heart rate, mean pressure, end-tidal carbon dioxide, temperature; all invented. */
const looks = [
  ['09:10', '82', '76', '38', '37.9'],
  ['09:15', '80', '72', '39', '37.8'],
  ['09:20', '78', '70', '40', '37.8'],
  ['09:25', '76', '71', '40', '37.7'],
  ['09:30', '78', '72', '40', '37.6'],
  ['09:35', '79', '73', '41', '37.6'],
  ['09:40', '80', '72', '41', '37.5'],
  ['09:45', '88', '80', '42', '37.4'],
  ['09:50', '86', '78', '42', '37.4'],
  ['09:55', '85', '72', '42', '37.3'],
  ['10:00', '84', '70', '42', '37.3'],
  ['10:05', '86', '68', '43', '37.3'],
  ['10:10', '87', '70', '43', '37.2'],
  ['10:30', '88', '74', '43', '37.1'],
  ['10:35', '90', '75', '43', '37.1'],
  ['10:40', '94', '78', '42', '37.0'],
  ['10:45', '92', '77', '42', '37.0'],
  ['10:50', '90', '76', '42', '37.0'],
  ['10:55', '88', '76', '41', '36.9'],
  ['11:00', '86', '76', '41', '36.9'],
  ['11:05', '84', '74', '41', '36.8'],
  ['11:10', '83', '74', '41', '36.8'],
  ['11:15', '84', '75', '40', '36.8'],
  ['11:20', '85', '77', '40', '36.7'],
  ['11:25', '88', '80', '40', '36.7'],
  ['11:30', '92', '86', '39', '36.7'],
  ['11:35', '98', '92', '38', '36.7'],
] as const

/** What was observed in her anaesthetic: every five minutes, with twenty that nobody could fill. */
export function observeTansy(chart: Chart, operation: Subject): void {
  const observe = (time: string, body: Partial<Body>) =>
    chart.write(
      'observation',
      { at: `2025-03-11 ${time}`, by: staff.adeyemi, subject: operation },
      { ...emptyLook, where: 'theatre', ...body },
    )
  for (const [time, heart, mean, carbonDioxide, temperature] of looks) {
    // Written between the looks around it, as it happened.
    if (time === '10:30') gap(observe)
    observe(time, {
      values: [
        { what: 'heart-rate', value: { value: heart, unit: '/min' }, method: 'ECG', artefact: false },
        {
          what: 'mean',
          value: { value: mean, unit: 'mm[Hg]' },
          method: 'oscillometric, right forelimb',
          artefact: false,
        },
        { what: 'end-tidal-co2', value: { value: carbonDioxide, unit: 'mm[Hg]' }, method: null, artefact: false },
        { what: 'temperature', value: { value: temperature, unit: 'Cel' }, method: 'oesophageal', artefact: false },
      ],
    })
  }
}

function gap(observe: (time: string, body: Partial<Body>) => void): void {
  observe('10:15', {
    values: [{ what: 'heart-rate', value: { value: '212', unit: '/min' }, method: 'ECG', artefact: true }],
    text: 'Electrocautery.',
  })
  observe('10:22', { unmeasured: 'The head was turned, the cuff and the gas line came off and were put on anew.' })
}
