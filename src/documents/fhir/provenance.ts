import { systems } from '#content/exchange/fhir-codes.ts'
import { exchangeInEnglish as say } from '#content/wording/exchange.ts'
import type { Line } from '#core/journal/fold.ts'
import type { Around } from './around.ts'
import { local, words } from './concepts.ts'
import { derivedUuid, entryUuid, urn } from './naming.ts'
import type { ResourceOf } from './written.ts'

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
