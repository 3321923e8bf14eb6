import type { OwedRow, Projector } from '#actions/store.ts'
import type { StoredEntry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'

/** A note on which this projector fails, and one of which it makes two rows with one id. */
export const failingNote = 'The projector fails on this.'
export const doubledNote = 'This is owed twice under one id.'

/** How often this process was asked for a projection. */
export const asked = { times: 0 }

/**
 * A small projection made by really folding the entries: every live note is owed a reading within a week, and the
 * row of a case shows its last weight, its conflicts, and how much came from linked files and the clinic.
 */
const projectStream: Projector = ({ stream, entries, clinicEntries, linked, everywhere, keptAside, rows }) => {
  asked.times += 1
  const folded = fold(entries)
  const notes = folded.live('note').map(({ body }) => body.text)
  if (notes.includes(failingNote)) throw new Error('projector at its end')
  const owed = folded.live('note').map(({ header, body, at }): OwedRow => {
    const dueBy = new Date(Date.parse(at) + 7 * 86_400_000).toISOString()
    return {
      stream,
      id: `read-${header.id}`,
      what: body.text,
      who: 'person-nurse',
      dueFrom: at,
      dueBy,
      why: 'note',
      sources: [],
    }
  })
  if (notes.includes(doubledNote)) owed.push(...owed)
  if (stream === 'clinic') owed.push(...readEverywhereOwed(everywhere))
  if (!stream.startsWith('case:')) return { owed, row: null }
  const weight = folded.latest('weight')?.body.weight.value ?? 'not weighed'
  const days = rows.filter(({ register }) => register === 'closed-day').length
  const chapter = `${weight}, ${linked.length} linked, ${readOfClinic(clinicEntries)} of the clinic, ${days} closed days, ${keptAside.length} aside`
  const { conflicts } = folded
  const row = { stream, animal: 'animal-1', name: 'Bramble', species: 'dog', chip: null, contact: 'c1', chapter }
  const household = 'household-1'
  return { owed, row: { ...row, household, conflicts: conflicts.length } }
}

/** The clinic's own row counts the register lines and what was wasted, wherever they stand. */
const readEverywhere = ['register-line', 'drug-wasted'] as const

function readEverywhereOwed(everywhere: readonly StoredEntry[]): OwedRow[] {
  if (everywhere.length === 0) return []
  const what = `${fold(everywhere).live('register-line').length} lines, ${everywhere.length} entries`
  const at = '2026-03-01T08:00:00.000Z'
  return [
    { stream: 'clinic', id: 'everywhere', what, who: 'desk', dueFrom: at, dueBy: at, why: 'everywhere', sources: [] },
  ]
}

/** These lists count the clinic's own entries, but not what stands on its shelf. */
function readOfClinic(clinicEntries: readonly StoredEntry[]): string {
  return String(clinicEntries.filter(({ header }) => header.kind !== 'shelf-item').length)
}

export const projectForTests: Projector = Object.assign(projectStream, { readOfClinic, readEverywhere })
