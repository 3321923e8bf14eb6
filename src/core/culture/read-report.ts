import type { Species } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import type { StoredIsolate } from '#core/journal/kinds/specimen-result.ts'
import type { Edition } from './breakpoint.ts'
import { compareEditions, type EditionDifference } from './compare-editions.ts'
import { conventionCalled, editionCalled } from './editions.ts'
import type { SusceptibilityFacts } from './facts.ts'
import { type ReadingRequest, readIsolates } from './read-isolates.ts'
import type { IsolateReading } from './reading.ts'
import { recogniseAgent, recogniseOrganism } from './recognise.ts'

/** A report as it is read: by which edition, and what of each isolate. */
export type ReportReading = {
  readonly edition: Edition
  readonly isolates: readonly IsolateReading[]
  /** The edition that the laboratory names, where it is another one, and what it says otherwise. */
  readonly laboratory: { readonly edition: Edition; readonly differences: readonly EditionDifference[] } | null
}

/**
 * A report read for its animal: by the edition somebody judged it by, else by that of the house. Null without a species,
 * or where that edition is not held here: then nothing is read rather than by another one.
 *
 * @example readReport(file, report, factsOfHouse(file, susceptibility))?.isolates[0]?.phenotype.methicillinResistant // 'yes'
 */
export function readReport(
  { theCase }: Pick<CaseFile, 'theCase'>,
  { header, body }: Line<BodyOf<'specimen-result'>>,
  facts: SusceptibilityFacts,
): ReportReading | null {
  const host = theCase.latest('identity')?.body.species
  const judged = judgedBy({ theCase }, header.id)
  const edition = facts.editions.find(({ id }) => id === (judged ?? facts.usual))
  if (!host || !edition) return null
  const request = requestOf(body, host, edition, facts)
  const isolates = readIsolates(request, facts)
  const theirs = facts.editions.find(({ id }) => id === request.laboratory)
  return {
    edition,
    isolates,
    laboratory:
      !theirs || theirs === edition
        ? null
        : { edition: theirs, differences: compareEditions(request, isolates, facts) },
  }
}

/** The edition that somebody judged a report by, where one was named. */
export function judgedBy({ theCase }: Pick<CaseFile, 'theCase'>, report: string): Edition['id'] | null {
  return (
    theCase.live('result-read').findLast(({ body }) => body.result === report && body.edition)?.body.edition ?? null
  )
}

/** A report as it is asked to be read: for an ear, with what its laboratory says of its own standard. */
export function requestOf(
  { standard, isolates }: BodyOf<'specimen-result'>,
  host: Species,
  { id }: Edition,
  facts: SusceptibilityFacts,
): ReadingRequest {
  return {
    host,
    site: 'soft-tissue',
    edition: id,
    laboratory: standard === null ? null : (editionCalled(standard, facts.editions)?.id ?? null),
    laboratoryConvention: standard === null ? null : conventionCalled(standard),
    isolates: isolates.map((isolate) => withNames(isolate, facts)),
  }
}

/** Names that nobody had settled when it was written, and that mean one thing: an older entry holds none. */
function withNames(isolate: StoredIsolate, { organisms, agents }: SusceptibilityFacts): StoredIsolate {
  return {
    ...isolate,
    species: isolate.species ?? recogniseOrganism(isolate.organism, organisms).id,
    results: isolate.results.map((row) => ({ ...row, agent: row.agent ?? recogniseAgent(row.drug, agents).id })),
  }
}
