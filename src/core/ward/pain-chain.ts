import type { BodyOf, Case, Line } from '#core/journal/fold.ts'

export type Score = Line<BodyOf<'ward-score'>>
export type Given = Line<BodyOf<'drug-given'>>

/** One score of the chain, with what was done about it and what may have been. */
export type ChainLink = {
  readonly score: Score
  /** Drugs that the score names as its action. */
  readonly given: readonly Given[]
  /** Pain relief that was given between this score and the next one, and that no score names: perhaps the action. */
  readonly unnamed: readonly Given[]
  /** When something was first done about it; null: nothing that is on record. */
  readonly actedAt: string | null
}

/**
 * Score, action, score again, as the entries tell it. A drug counts as what answers pain by its use; which score it
 * answered is said by a person, and only offered here.
 *
 * @example painChain(theCase, stay.since, relieves).at(-1)?.actedAt // '2026-02-10T14:10:00.000Z'
 */
export function painChain(theCase: Case, since: string, relieves: readonly string[]): ChainLink[] {
  const rounds = theCase.live('ward-score').filter(({ at, body }) => at >= since && isAboutPain(body))
  const scored = rounds.filter(({ body }) => body.pain !== null)
  const drugs = theCase.live('drug-given')
  const named = new Set(theCase.live('ward-score').flatMap(({ body }) => body.given))
  return rounds.map((score) => {
    const next = scored.find(({ at }) => at > score.at)
    const between = drugs.filter(({ at }) => at >= score.at && (!next || at < next.at))
    const given = score.body.given.flatMap((id) => drugs.find(({ header }) => header.id === id) ?? [])
    const unnamed =
      score.body.pain === null
        ? []
        : between.filter(({ header, body }) => relieves.includes(body.use) && !named.has(header.id))
    const wordsAt = score.body.action === null ? [] : [score.at]
    const actedAt = [...given, ...unnamed].map(({ at }) => at)
    return { score, given, unnamed, actedAt: [...actedAt, ...(actedAt.length === 0 ? wordsAt : [])].sort()[0] ?? null }
  })
}

function isAboutPain({ pain, notScoredBecause, action, given }: BodyOf<'ward-score'>): boolean {
  return pain !== null || notScoredBecause !== null || action !== null || given.length > 0
}
