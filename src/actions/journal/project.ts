import { ownCounting } from '#content/evidence/own-counting.ts'
import { hygieneRules } from '#content/follow-up/hygiene-rules.ts'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedInEnglish } from '#content/wording/owed.ts'
import { reachedChapter } from '#core/chapters/chapter-of-kind.ts'
import { operatedEarsOf } from '#core/evidence/own/operated-ear.ts'
import { currentRows } from '#core/journal/case-file.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { StoredEntry } from '#core/journal/entry.ts'
import { fold, type KindName } from '#core/journal/fold.ts'
import type { Row } from '#core/journal/journal-file.ts'
import { owedOf } from '#core/owed/owed.ts'
import { sourceIdsOf } from '#core/owed/owed-item.ts'
import { sayOwed } from '#core/owed/owed-wording.ts'
import { trayStream } from '#core/tray/tray.ts'
import { registerKinds } from '../register/read-registers.ts'
import { registerOwed } from '../register/register-owed.ts'
import type { CaseRow, OwedRow, Projected, Projection, Projector } from '../store.ts'
import { trayOwed } from '../tray/tray-owed.ts'
import { errataOwed } from '../yearly/errata-owed.ts'
import { caseFile } from './case-file.ts'

/**
 * What the lists show of one stream: everything owed in the case, and its row in the list of cases; of the holding
 * tray, what waits there; of the clinic itself, what its controlled-drug registers are owed. Only cases are listed; a clinic without its own row yet has nothing owed, because its zone and closed days are not known.
 */
function projectStream(about: Projected): Projection {
  const { clinic, stream } = about
  const rows = about.rows as readonly Row[]
  if (stream === trayStream) return { owed: trayOwed(about), row: null }
  if (stream === 'clinic') return { owed: registerOwed(about), row: null }
  if (!stream.startsWith('case:') || currentRows(rows).clinic.size === 0) return { owed: [], row: null }
  const entries = [...about.clinicEntries, ...about.entries, ...about.linked]
  const file = caseFile({ clinic, rows, entries }, stream)
  const operated = JSON.stringify(operatedEarsOf(file, { ...owedRules, counting: ownCounting }))
  return { owed: owedRows(file, about), row: caseRow(file), operated }
}

/** Kinds of the clinic's own stream that no list reads: what stands on the shelf, and how this house doses. */
export const unreadByLists = [
  'figures-approved',
  'figures-left',
  'laboratory-table',
  'shelf-item',
  'dose-policy',
  'register-line',
  'usual-plan',
] as const satisfies readonly KindName[]

/** Any other entry may change what is owed anywhere, and so may entries that now stand side by side or wait for others. */
function readOfClinic(clinicEntries: readonly StoredEntry[]): string {
  const unread: readonly string[] = unreadByLists
  const { conflicts, pending, unknown } = fold(clinicEntries)
  const read = clinicEntries.filter(({ header }) => !unread.includes(header.kind)).map(({ envelope }) => envelope.hash)
  return JSON.stringify([conflicts, pending, unknown.map(({ header }) => header.id), read])
}

export const project: Projector = Object.assign(projectStream, { readOfClinic, readEverywhere: registerKinds })

function owedRows(file: CaseFile, about: Projected): OwedRow[] {
  const { stream, keptAside } = about
  const { owed } = owedOf(file, procedures, { rules: owedRules, hygiene: hygieneRules, keptAside })
  return [...owed, ...errataOwed(file, about)].map((item) => {
    const { what, why } = sayOwed(item, owedInEnglish)
    const who = item.person ?? item.who
    return { stream, id: item.id, what, who, dueFrom: item.dueFrom, dueBy: item.dueBy, why, sources: sourceIdsOf(item) }
  })
}

function caseRow({ stream, theCase }: CaseFile): CaseRow | null {
  const identity = theCase.latest('identity')
  if (!identity) return null
  const { name, species, chip, household } = identity.body
  const { subject } = identity.header
  const owner = theCase
    .live('household')
    .find(({ header }) => header.subject.kind === 'household' && header.subject.household === household)
    ?.body.contacts.find(({ roles }) => roles.includes('owner'))
  return {
    stream,
    animal: 'animal' in subject ? subject.animal : '',
    name,
    species,
    chip,
    contact: owner?.contact ?? null,
    household: household ?? null,
    chapter: reachedChapter(theCase),
    conflicts: theCase.conflicts.length,
  }
}
