import { owedInEnglish } from '#content/wording/owed.ts'
import type { Owed, OwedItem } from '#core/owed/owed-item.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { animalsOf, patientUuid } from './animals.ts'
import type { Around } from './around.ts'
import { answer, local } from './concepts.ts'
import { dateTime } from './fhir-time.ts'
import { derivedUuid, urn } from './naming.ts'
import type { ResourceOf } from './written.ts'

/** What is owed when the bundle is written, each thing a task with its limits. */
export function owedTasks(owed: Owed, around: Around): ResourceOf<'Task'>[] {
  const [animal] = animalsOf(around.file)
  const patient =
    animal === undefined ? undefined : { reference: urn(patientUuid(around.file, animal)), type: 'Patient' }
  const seen = new Map<string, number>()
  return owed.owed.map((item) => {
    // Entries that stand side by side may owe the same thing twice, under one id.
    const before = seen.get(item.id) ?? 0
    seen.set(item.id, before + 1)
    return task(item, around, { patient, key: before === 0 ? item.id : `${item.id} ${before}` })
  })
}

type Named = { readonly patient: { reference: string; type: string } | undefined; readonly key: string }

function task(item: OwedItem, around: Around, { patient, key }: Named): ResourceOf<'Task'> {
  const { what, who, why } = sayOwed(item, owedInEnglish)
  const { zone, precision } = item
  const limit = (at: string) => dateTime({ at, zone, precision, by: 'clock' })
  const { clinicId, stream } = around.file
  return {
    resourceType: 'Task',
    id: derivedUuid(clinicId, stream, 'owed', key),
    status: 'requested',
    intent: 'plan',
    code: local(item.what, what),
    description: why,
    for: patient,
    executionPeriod: { start: limit(item.dueFrom), end: limit(item.dueBy) },
    performerType: [{ ...answer(item.who), text: who }],
    owner: item.person === null ? undefined : around.people.person(item.person),
  }
}
