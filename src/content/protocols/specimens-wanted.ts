import type { ProcedureId } from '#core/animal/procedure.ts'
import type { Sourced } from '#core/evidence/sourced.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import type { SpecimenSite } from '#core/theatre/specimens.ts'
import { commonPractice, readStudy } from '../follow-up/provenance.ts'

type Test = BodyOf<'specimen'>['tests'][number]

const practice = { ...commonPractice, checked: '2026-11-29' } as const
const study = { ...readStudy, sources: ['hettlich-2005'], checked: '2026-11-29' } as const
const bothTimes = {
  value: ['bulla-on-entry', 'bulla-after-lavage'],
  ...study,
  where: 'samples before and after flushing differed in 31 of 44 ears; 26 % grew something only after the flush',
} as const
const tissue = { value: ['canal-tissue'], ...practice, where: 'what is cut out goes to histology' } as const

/** What is taken in each operation, so that the screen says what is still to be taken. */
export const specimensWanted: Readonly<Record<ProcedureId, readonly Sourced<readonly SpecimenSite[]>[]>> = {
  'teca-lbo': [bothTimes, tissue],
  'ventral-bulla-osteotomy': [bothTimes],
  traction: [{ value: ['mass'], ...practice, where: 'what is pulled out goes to histology' }],
  'lateral-wall-resection': [tissue],
  'vertical-canal-ablation': [tissue],
  'subtotal-ablation': [tissue],
}

/** Which tests stand beside a place when it is sampled; a person takes away or adds any before the tap. */
export const testsProposed: Readonly<
  Record<'bulla-on-entry' | 'bulla-after-lavage' | 'canal-tissue' | 'mass', Sourced<readonly Test[]>>
> = {
  'bulla-on-entry': { value: ['aerobic-culture', 'anaerobic-culture'], ...practice },
  'bulla-after-lavage': { value: ['aerobic-culture', 'anaerobic-culture'], ...practice },
  'canal-tissue': { value: ['histology'], ...practice },
  mass: { value: ['histology'], ...practice },
}
