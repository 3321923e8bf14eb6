import { canonical, type Json } from '#core/journal/canonical.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { type Result, resultsUnder, sameRoot } from './match-specimen.ts'

type Body = BodyOf<'specimen-result'>

/** Who had already acted on what a report now replaces: read it, told somebody, changed the medicines. */
export type Acted = Line<BodyOf<'result-read'>> | Line<BodyOf<'told'>> | Line<BodyOf<'medicine-change'>>

/** What filing a report would do to the case. Only `new` and `supersedes` write anything. */
export type Filing =
  | { readonly kind: 'new' }
  | { readonly kind: 'supersedes'; readonly results: readonly Result[]; readonly acted: readonly Acted[] }
  | { readonly kind: 'already-here'; readonly result: Result }
  | { readonly kind: 'older-than-filed'; readonly result: Result }
  | { readonly kind: 'other-specimen'; readonly result: Result }

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
  return results.length === 0 ? { kind: 'new' } : { kind: 'supersedes', results, acted: actedOn(results, theCase) }
}

/** How it came and what it was taken for may differ; what the laboratory said may not. */
function told({ status, growth, isolates, tissue, text }: Body): string {
  const said = isolates.map(({ species: _, results, ...rest }) => ({
    ...rest,
    results: results.map(({ agent: __, ...printed }) => printed),
  }))
  return canonical({ status, growth, isolates: said, tissue, text } as unknown as Json)
}

/**
 * Everybody who acted on some results, or on what those results replaced before.
 *
 * @example actedOn([final], theCase).map(({ header }) => header.author)
 */
export function actedOn(results: readonly Result[], theCase: Case): Acted[] {
  const roots = new Set(results.map(({ header }) => header.id))
  const about = (id: string) => roots.has(id) || [...roots].some((root) => sameRoot(theCase, root, id))
  const reads = theCase.live('result-read').filter(({ body }) => about(body.result))
  const read = new Set(reads.map(({ header }) => header.id))
  const tellings = theCase.live('told').filter(({ body }) => about(body.about) || read.has(body.about))
  const changes = theCase.live('medicine-change').filter(({ body }) => body.read !== null && read.has(body.read))
  return [...reads, ...tellings, ...changes]
}
