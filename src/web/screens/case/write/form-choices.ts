import { formulary } from '#content/formulary/index.ts'
import { procedures } from '#content/procedures/index.ts'
import { spokenPauses } from '#content/protocols/spoken-pauses.ts'
import { caseInEnglish, namesInEnglish } from '#content/wording/app-case.ts'
import { shellInEnglish } from '#content/wording/app-shell.ts'
import { householdsIn } from '#core/chapters/subjects-for.ts'
import type { Register } from '#core/forms/arrangement.ts'
import { type Draft, draftAt } from '#core/forms/draft.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Subject } from '#core/journal/entry.ts'
import { operationsOf } from '#core/owed/operations.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { namesOf } from '#core/reading/names-of.ts'
import type { Choosable, FormChoices } from '../../../forms/scope.ts'
import { type CaseView, library } from '../case-view.ts'

/** What the ids of a form may point to in this case and this clinic, as far as its draft has come. */
export function formChoices(view: CaseView, subject: Subject | null, draft: Draft): FormChoices {
  const { file } = view
  const operation = operationsOf(file).find(({ id }) => subject?.kind === 'operation' && subject.operation === id)
  const checkpoints = operation ? procedureNamed(operation.procedure, procedures).checkpoints : []
  const pause = spokenPauses.find((one) => one.pause === draftAt(draft, 'pause'))
  const marks = Object.entries(namesInEnglish.clockMarks).map(([id, label]) => ({ id, label }))
  return {
    checkpoints,
    registers: {
      ...registersOf(file),
      checkpoint: [...marks, ...checkpoints.map(({ id, title }) => ({ id, label: title }))],
      'pause-item': pause?.items.map(({ id, states }) => ({ id, label: states })) ?? [],
    },
    entries: (kinds) =>
      [...view.file.theCase.lines]
        .filter(({ header, state, known }) => known && state === 'live' && kinds.some((kind) => kind === header.kind))
        .reverse()
        .map((line) => ({
          id: line.header.id,
          label: [view.nameOfEntry(line.header.id), view.gist(line)].filter((part) => part !== '').join(': '),
        })),
  }
}

function registersOf(file: CaseFile): Partial<Record<Register, readonly Choosable[]>> {
  const { registered } = namesOf({ header: anyHeader }, file, library)
  const named = (register: Register, ids: Iterable<string>) =>
    [...ids].map((id) => ({ id, label: registered(register, id, {}) })).sort((a, b) => a.label.localeCompare(b.label))
  const ofKind = (kind: string) => [...file.contacts].filter(([, row]) => row.kind === kind).map(([id]) => id)
  const people = [...file.people].map(([id, { name, role }]) => ({
    id,
    label: `${name}, ${shellInEnglish.roles[role]}`,
  }))
  const household = file.theCase.latest('household')?.body.contacts.map(({ contact }) => contact) ?? []
  const others = [...file.contacts.keys()].filter((id) => !household.includes(id))
  const contacts = [...named('contact', household), ...named('contact', others)]
  return {
    person: people,
    contact: contacts,
    'contact-or-person': [...contacts, ...people],
    vet: named('vet', ofKind('vet')),
    laboratory: named('laboratory', ofKind('laboratory')),
    household: householdsIn(file).map((id) => ({ id, label: sayHousehold(id, file) })),
    operation: named(
      'operation',
      operationsOf(file).map(({ id }) => id),
    ),
    drug: formulary.map(({ id, name }) => ({ id, label: name })).sort((a, b) => a.label.localeCompare(b.label)),
    'shelf-item': file.house.live('shelf-item').map(({ body }) => ({ id: body.item, label: body.label })),
  }
}

/** A household has no name: the people in it, or that it begins here. */
function sayHousehold(id: string, file: CaseFile): string {
  const said = namesOf({ header: anyHeader }, file, library).registered('household', id, {})
  return said === id ? caseInEnglish.write.newHousehold : said
}

/** Names of people, contacts, drugs and operations do not depend on the line that holds them. */
const anyHeader = { subject: { kind: 'clinic' } } as Parameters<typeof namesOf>[0]['header']
