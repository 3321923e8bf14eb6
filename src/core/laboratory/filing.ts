import { canonical, type Json } from '#core/journal/canonical.ts'
import type { BodyOf, Case } from '#core/journal/fold.ts'
import { olderVersions } from '#core/journal/older-versions.ts'
import { type Acted, actedOn, type ResultLine } from '#core/owed/specimen-loop.ts'
import { resultsUnder, sameRoot } from './match-specimen.ts'

type Body = BodyOf<'specimen-result'>

/** What filing a report would do to the case. Only `new` and `supersedes` write anything. */
export type Filing =
  | { readonly kind: 'new' }
  | { readonly kind: 'supersedes'; readonly results: readonly ResultLine[]; readonly acted: readonly Acted[] }
  | { readonly kind: 'already-here'; readonly result: ResultLine }
  | { readonly kind: 'older-than-filed'; readonly result: ResultLine }
  | { readonly kind: 'other-specimen'; readonly result: ResultLine }

const rank: Readonly<Record<Body['status'], number>> = { preliminary: 0, final: 1, corrected: 2 }

/**
 * What a report does under a number that the case has already: the same again is not filed twice, a later one takes the
 * place of the earlier, and one that is older than what stands there is left alone.
 *
 * @example filingOf(body, theCase).kind // 'supersedes'
 */
export function filingOf(body: Body, theCase: Case): Filing {
  const results = resultsUnder(body.accession, theCase).filter(
    (one) => body.laboratory === null || one.body.laboratory === null || one.body.laboratory === body.laboratory,
  )
  const other = results.find((one) => !sameRoot(theCase, one.body.specimen, body.specimen))
  if (other) return { kind: 'other-specimen', result: other }
  const same = results.find((one) => told(one.body) === told(body))
  if (same) return { kind: 'already-here', result: same }
  const newer = results.find((one) => rank[one.body.status] > rank[body.status])
  if (newer) return { kind: 'older-than-filed', result: newer }
  if (results.length === 0) return { kind: 'new' }
  // Also whoever acted on a version before the one that stands now.
  const versions = results.flatMap(({ header }) => [header.id, ...olderVersions(header.id, theCase)])
  return { kind: 'supersedes', results, acted: actedOn(versions, theCase) }
}

/** How it came and what it was taken for may differ; what the laboratory said may not. */
function told({ status, growth, isolates, tissue, text }: Body): string {
  const said = isolates.map(({ species: _, results, ...rest }) => ({
    ...rest,
    results: results.map(({ agent: __, ...printed }) => printed),
  }))
  return canonical({ status, growth, isolates: said, tissue, text } as unknown as Json)
}
