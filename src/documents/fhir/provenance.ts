import { systems } from '#content/exchange/fhir-codes.ts'
import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import type { Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { animalsOf, patientUuid } from './animals.ts'
import type { Around } from './around.ts'
import { local, words } from './concepts.ts'
import { derivedUuid, entryUuid, urn } from './naming.ts'
import type { ResourceOf } from './written.ts'

/** From which journal the whole bundle was told, by which clinic, and when; none where there is no animal to tell of. */
export function originOf({ file, on, people }: Around): ResourceOf<'Provenance'>[] {
  const target = animalsOf(file).map((animal) => ({ reference: urn(patientUuid(file, animal)), type: 'Patient' }))
  if (target.length === 0) return []
  const entries = String(file.theCase.lines.length)
  return [
    {
      resourceType: 'Provenance',
      id: derivedUuid(file.clinicId, file.stream, 'origin'),
      target,
      recorded: on,
      activity: words(say.origin),
      agent: [
        {
          type: { coding: [{ system: systems.provenanceAgent, code: 'assembler', display: 'Assembler' }] },
          who: people.clinic,
        },
      ],
      entity: [
        {
          role: 'source',
          what: {
            identifier: { system: systems.ids, value: `${file.clinicId}/${file.stream}` },
            display: fill(say.journalOf, { entries }),
          },
        },
      ],
    },
  ]
}

type Role = 'revision' | 'removal' | 'derivation'

/** Who corrected, took back or filed again what, when and why; one for each live entry that does so. */
export function provenanceOf(around: Around): ResourceOf<'Provenance'>[] {
  return around.file.theCase.lines
    .filter((line) => line.state === 'live')
    .flatMap((line) => {
      const { supersedes, withdraws, refiledFrom } = line.header
      const own = around.entry(line.header.id)
      return [
        ...(supersedes.length === 0 ? [] : [trail(line, around, 'revision', [own], supersedes)]),
        ...(withdraws === null ? [] : [trail(line, around, 'removal', [named(withdraws)], [withdraws])]),
        ...(refiledFrom === null ? [] : [trail(line, around, 'derivation', [own], [refiledFrom])]),
      ]
    })
}

const said: Record<Role, { readonly code: string; readonly text: string; readonly operation: string }> = {
  revision: { code: 'superseded', text: say.superseded, operation: 'UPDATE' },
  removal: { code: 'withdrawn', text: say.withdrawn, operation: 'NULLIFY' },
  derivation: { code: 'refiled', text: say.refiled, operation: 'CREATE' },
}

function trail(
  line: Line,
  around: Around,
  role: Role,
  target: ResourceOf<'Provenance'>['target'],
  earlier: readonly string[],
): ResourceOf<'Provenance'> {
  const { code, text, operation } = said[role]
  const { header } = line
  const activity = local(code, text)
  return {
    resourceType: 'Provenance',
    id: derivedUuid(header.id, 'provenance', role),
    target,
    recorded: header.writtenAt,
    reason: header.reason === null ? [] : [words(header.reason)],
    activity: {
      coding: [{ system: systems.dataOperation, code: operation }, ...(activity.coding ?? [])],
      text,
    },
    agent: [{ who: around.author(line) }],
    entity: earlier.map((id) => ({ role, what: gone(id) })),
  }
}

/** The resource of exactly this entry, withdrawn or not. */
function named(id: string) {
  return { reference: urn(entryUuid(id)) }
}

/** An earlier version is named and is not in the bundle. */
function gone(id: string) {
  return { identifier: { system: systems.uri, value: urn(entryUuid(id)) } }
}
