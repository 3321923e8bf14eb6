import type { Side } from '#core/animal/species.ts'
import { emptyReport } from '#core/culture/empty-report.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import { staff } from '../practice.ts'
import type { Living } from './animal.ts'

type Sampled = Pick<BodyOf<'specimen'>, 'site' | 'label' | 'operation' | 'antibioticsOnBoard'>

/** A sample for culture; gives the entry it is asked by. */
export function sample(one: Living, side: Side, at: string, taken: Sampled): string {
  return one.chart.write(
    'specimen',
    { at, by: staff.castellane, subject: one.ear(side) },
    { tests: ['aerobic-culture', 'anaerobic-culture'], laboratory: 'contact-laboratory', expectedBy: null, ...taken },
  )
}

type Came = {
  readonly on: string
  readonly number: string
  /** None: nothing grew. */
  readonly isolate: StoredIsolate | null
  readonly decided: Pick<BodyOf<'result-read'>, 'decision' | 'text'>
}

/** Its final report in the morning, read at noon, and owner and vet told in the afternoon: nothing is left to do. */
export function reported(one: Living, side: Side, specimen: string, { on, number, isolate, decided }: Came): void {
  const subject = one.ear(side)
  const result = one.chart.write(
    'specimen-result',
    { at: `${on} 11:10`, by: { kind: 'import', from: 'contact-laboratory' }, subject },
    {
      ...emptyReport,
      specimen,
      status: 'final',
      growth: isolate === null ? 'none' : 'growth',
      laboratory: 'contact-laboratory',
      accession: number,
      standard: 'CLSI VET01S ed7',
      isolates: isolate === null ? [] : [isolate],
    },
  )
  one.chart.write(
    'result-read',
    { at: `${on} 12:20`, by: staff.holm, subject },
    { result, edition: isolate === null ? null : 'clsi-vet01s-7', ...decided },
  )
  const told = (at: string, who: 'owner' | 'referring-vet', contact: string, by: 'phone' | 'email') =>
    one.chart.write(
      'told',
      { at: `${on} ${at}`, by: staff.holm, subject },
      { about: result, who, contact, by, text: null },
    )
  told('15:30', 'owner', one.owner, 'phone')
  told('15:40', 'referring-vet', 'contact-oyelaran', 'email')
}

type Panel = readonly (readonly [agent: string, mic: string])[]

function isolateOf(organism: string, species: string, panel: Panel): StoredIsolate {
  const results = panel.map(([agent, mic]) => {
    return { drug: agent, agent, method: 'MIC', raw: `${mic} mg/L`, disk: null, category: null } as const
  })
  return { key: '1', organism, species, amount: 'moderate', results, tests: [] }
}

/** Invented: resistant to oxacillin, and so to every beta-lactam, whatever else stands there. */
export const resistantStaphylococcus = isolateOf('Staphylococcus pseudintermedius', 'staphylococcus-pseudintermedius', [
  ['oxacillin', '>=4'],
  ['amoxicillin-clavulanate', '<=0.25'],
  ['cefalexin', '8'],
  ['clindamycin', '>=4'],
  ['doxycycline', '1'],
  ['enrofloxacin', '>=4'],
  ['gentamicin', '>=16'],
  ['amikacin', '<=2'],
  ['trimethoprim-sulfonamide', '>=16/304'],
  ['chloramphenicol', '8'],
])

/** Invented: of a cat, and such that most drugs would do in a dish. */
export const coliOfACat = isolateOf('Escherichia coli', 'escherichia-coli', [
  ['amoxicillin-clavulanate', '4'],
  ['cefovecin', '<=0.5'],
  ['enrofloxacin', '<=0.12'],
  ['marbofloxacin', '<=0.5'],
  ['gentamicin', '<=1'],
  ['amikacin', '<=2'],
  ['trimethoprim-sulfonamide', '<=0.5/9.5'],
  ['doxycycline', '4'],
])
