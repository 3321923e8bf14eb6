import type { Side } from '#core/animal/species.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { olderVersions } from '#core/journal/older-versions.ts'
import { rootOf } from './operations.ts'

export type SpecimenLine = Line<BodyOf<'specimen'>>
export type ResultLine = Line<BodyOf<'specimen-result'>>
export type ReadLine = Line<BodyOf<'result-read'>>
/** Who hears of a result; the one who cares for the animal in place of the owner is told for the owner. */
export type Outside = Exclude<BodyOf<'told'>['who'], 'carer'>
export type TestGroup = 'culture' | 'histology' | 'cytology'

/** Something somebody did because of a report that has been corrected or taken away since. */
export type Acted = {
  readonly what: 'read' | 'told-owner' | 'told-referring-vet' | 'changed'
  readonly line: Line<unknown>
}
// A carer who heard something wrong is put right through the owner.
const toldWho = { owner: 'told-owner', carer: 'told-owner', 'referring-vet': 'told-referring-vet' } as const

/** One report that counts, with what followed from it. */
export type ReportInLoop = {
  readonly result: ResultLine
  /** Everybody who read this version, oldest first. */
  readonly reads: readonly ReadLine[]
  /** The newest reading that decided; one that only says "later" decides nothing. */
  readonly decided: ReadLine | null
  readonly change: Line<BodyOf<'medicine-change'>> | null
  readonly told: Readonly<Record<Outside, Line<BodyOf<'told'>> | null>>
  /** What was done because of a version that this one replaced: all of it has to be looked at again. */
  readonly before: readonly Acted[]
}

export type SpecimenLoop = {
  readonly specimen: SpecimenLine
  readonly side: Side | null
  readonly reports: readonly ReportInLoop[]
  /** For each kind of test the final report that answers it, or null while none has come. */
  readonly answered: Readonly<Partial<Record<TestGroup, ResultLine | null>>>
}

/**
 * From the swab to "owner told": each specimen with its reports, who read them, what was decided, and who was told.
 *
 * @example specimenLoopsOf(theCase)[0].reports[0].told.owner // null while nobody told the owner
 */
export function specimenLoopsOf(theCase: Case): SpecimenLoop[] {
  return theCase.live('specimen').map((specimen) => {
    const results = resultsOf(theCase, specimen.header.id)
    return {
      specimen,
      side: sideOf(specimen),
      reports: results.map((result) => reportOf(result, theCase)),
      answered: answeredOf(specimen, results),
    }
  })
}

/**
 * The specimen that a result speaks of. It names the entry it was asked with, also when that was corrected since.
 *
 * @example specimenOf(theCase, result.body.specimen)?.body.label // 'B-1'
 */
export function specimenOf(theCase: Case, id: string): SpecimenLine | undefined {
  const root = rootOf(theCase, id)
  return theCase.live('specimen').find(({ header }) => rootOf(theCase, header.id) === root)
}

/** The results that count of a specimen, oldest first. */
export function resultsOf(theCase: Case, specimen: string): ResultLine[] {
  const root = rootOf(theCase, specimen)
  return theCase.live('specimen-result').filter(({ body }) => rootOf(theCase, body.specimen) === root)
}

export function sideOf({ header: { subject } }: Pick<Line, 'header'>): Side | null {
  return subject.kind === 'ear' ? subject.side : null
}

/** A report on its own: also of one whose specimen nobody wrote down. */
export function reportOf(result: ResultLine, theCase: Case): ReportInLoop {
  const { id } = result.header
  const reads = theCase.live('result-read').filter(({ body }) => body.result === id)
  const decided = reads.findLast(({ body }) => body.decision !== 'decide-later') ?? null
  const changes = changesFrom(reads, theCase)
  const tellings = tellingsAbout([id, ...idsOf(reads), ...idsOf(changes)], theCase)
  const since = decidedOtherwiseAt(decided, theCase)
  const told = (who: Outside) => tellings.findLast(({ body, at }) => body.who === who && at >= since) ?? null
  return {
    result,
    reads,
    decided,
    change: changes.at(-1) ?? null,
    told: { owner: told('owner'), 'referring-vet': told('referring-vet') },
    before: actedOn(olderVersions(id, theCase), theCase),
  }
}

/** A reading that was corrected to another decision is told again; one whose words were corrected is not. */
function decidedOtherwiseAt(decided: ReadLine | null, theCase: Case): string {
  if (!decided) return ''
  const isOther = (id: string) => {
    const body = theCase.line(id)?.body as BodyOf<'result-read'> | null | undefined
    return body?.decision !== decided.body.decision
  }
  return olderVersions(decided.header.id, theCase).some(isOther) ? decided.at : ''
}

function changesFrom(reads: readonly Line<unknown>[], theCase: Case): readonly Line<BodyOf<'medicine-change'>>[] {
  const ids = new Set(idsOf(reads).flatMap((id) => [id, ...olderVersions(id, theCase)]))
  return theCase.live('medicine-change').filter(({ body }) => body.read !== null && ids.has(body.read))
}

/** Versions of a reading or of a change are one thing here; those of a report are not, each is told by itself. */
function tellingsAbout(ids: readonly string[], theCase: Case): readonly Line<BodyOf<'told'>>[] {
  const [, ...others] = ids
  const abouts = new Set([...ids, ...others.flatMap((id) => olderVersions(id, theCase))])
  return theCase.live('told').filter(({ body }) => abouts.has(body.about))
}

function idsOf(lines: readonly Pick<Line<unknown>, 'header'>[]): string[] {
  return lines.map(({ header }) => header.id)
}

/**
 * Who read, told or changed something because of these reports, in the order of time: what a correction or an unfiling
 * has to reach.
 *
 * @example actedOn([withdrawn.header.id], theCase).map(({ what }) => what) // ['read', 'told-owner']
 */
export function actedOn(results: readonly string[], theCase: Case): Acted[] {
  const reports = new Set(results)
  const reads = theCase.live('result-read').filter(({ body }) => reports.has(body.result))
  // Also of a reading that was taken back: the tablets it changed are still swallowed.
  const ever = theCase.lines.filter(({ header, body }) => {
    return header.kind === 'result-read' && reports.has((body as BodyOf<'result-read'> | null)?.result ?? '')
  })
  const changes = changesFrom(ever, theCase)
  const abouts = new Set([...results, ...idsOf(ever), ...idsOf(changes)])
  const tellings = theCase.live('told').filter(({ body }) => abouts.has(body.about))
  const acted: Acted[] = [
    ...reads.map((line) => ({ what: 'read' as const, line })),
    ...changes.map((line) => ({ what: 'changed' as const, line })),
    ...tellings.map((line) => ({ what: toldWho[line.body.who], line })),
  ]
  return acted.sort((a, b) => (a.line.at < b.line.at ? -1 : 1))
}

export function groupsOf({ body }: SpecimenLine): TestGroup[] {
  const groups = body.tests.map((test): TestGroup => (test === 'histology' || test === 'cytology' ? test : 'culture'))
  return [...new Set(groups)].sort()
}

/** Cultures end with a final culture; histology and cytology each with a final other result, in the order they came. */
function answeredOf(specimen: SpecimenLine, results: readonly ResultLine[]): SpecimenLoop['answered'] {
  const final = results.filter(({ body }) => body.status !== 'preliminary')
  const others = final.filter(({ body }) => body.growth === 'not-a-culture')
  const notCultures = groupsOf(specimen).filter((group) => group !== 'culture')
  return Object.fromEntries(
    groupsOf(specimen).map((group) => {
      const culture = final.find(({ body }) => body.growth !== 'not-a-culture')
      return [group, (group === 'culture' ? culture : others[notCultures.indexOf(group)]) ?? null]
    }),
  )
}
