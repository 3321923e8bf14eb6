import type { FindAccessionAnswer } from '#actions/tray/find-accession.ts'
import { plainName } from '#core/identity/names.ts'
import { type CaseMatch, type KnownCase, matchCase } from '#core/laboratory/match-case.ts'
import type { LaboratoryReport } from '#core/laboratory/report.ts'
import { type OpenCase, useAction, useCases, useLists } from '../../../journal/cases.ts'
import type { Lists } from '../../../journal/database.ts'

type Row = Lists['cases'][number]
/** A case that may be meant, with what stands on its tubes. */
export type Candidate = KnownCase & { readonly animal: string; readonly open: OpenCase }

export type Matched =
  | { readonly kind: 'looking' }
  | {
      readonly kind: 'found'
      readonly match: CaseMatch<Candidate>
      /** Another case that has results under the report's number already. */
      readonly elsewhere: string | null
    }

/** So many cases of one name are looked into; more are not told apart by their tubes. */
const mostLooked = 20

/** Holds a report against the cases on file: those of its name, its chip, its number. */
export function useMatch(report: LaboratoryReport): Matched {
  const lists = useLists()
  const { accession } = report
  const known = useAction<FindAccessionAnswer>('find-accession', { accessions: accession === null ? [] : [accession] })
  const rows = lists.kind === 'read' ? lists.value.cases : []
  const numbered = known.kind === 'read' ? known.value.found.map(({ stream }) => stream) : []
  const likely = rows.filter((row) => mayBe(row, report) || numbered.includes(row.stream)).slice(0, mostLooked)
  const opened = useCases(likely.map(({ stream }) => stream))
  if (lists.kind === 'loading' || known.kind === 'loading') return { kind: 'looking' }
  const candidates: Candidate[] = []
  for (const row of likely) {
    const reading = opened.get(row.stream)
    if (!reading || reading.kind === 'loading') return { kind: 'looking' }
    // One that cannot be read here is not ruled out by being left out: nothing is filed past it.
    if (reading.kind !== 'read') return { kind: 'looking' }
    candidates.push(candidateOf(row, reading.value))
  }
  const match = matchCase(report, candidates)
  const stream = match.kind === 'one' ? match.fit.row.stream : null
  const other = numbered.find((one) => one !== stream)
  return { kind: 'found', match, elsewhere: other ? (rows.find((row) => row.stream === other)?.name ?? other) : null }
}

function mayBe(row: Row, { animal }: LaboratoryReport): boolean {
  if (animal.chip !== null && row.chip === animal.chip) return true
  return animal.name !== null && plainName(animal.name) === plainName(row.name)
}

function candidateOf(row: Row, open: OpenCase): Candidate {
  const { theCase } = open.file
  return {
    stream: row.stream,
    animal: row.animal,
    name: row.name,
    species: row.species,
    chip: row.chip,
    ownerName: row.ownerName,
    labels: theCase.live('specimen').map(({ body }) => body.label),
    accessions: theCase.live('specimen-result').flatMap(({ body }) => body.accession ?? []),
    open,
  }
}
