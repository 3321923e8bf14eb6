import { evidenceRules } from '#content/evidence/prior.ts'
import { procedures } from '#content/procedures/index.ts'
import { sources } from '#content/sources/index.ts'
import { studies } from '#content/studies/index.ts'
import { oddsInEnglish } from '#content/wording/odds.ts'
import { toldInEnglish } from '#content/wording/told.ts'
import { cite } from '#core/evidence/cite.ts'
import type { OutcomeCode } from '#core/evidence/outcome-code.ts'
import { answeredQuestions, foundIn } from '#core/evidence/published.ts'
import { sayTold } from '#core/evidence/say-told.ts'
import { conflictOf, type OwnApproved, type Told, toldOf } from '#core/evidence/told.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { publishedEvidence } from '#documents/case/evidence-of.ts'
import { type OddsAnswer, ownPart, publishedPart, updatedPart } from './odds-answer.ts'
import { checkFactor, modifierAnswers } from './odds-modifiers.ts'
import type { PublishedOdds } from './odds-request.ts'

/** Every outcome of one operation: its risks, what studies answer, and what own counts were brought for. */
export function publishedAnswers({
  species,
  procedure,
  unit,
  own = {},
  modifiers: asked = [],
}: PublishedOdds): OddsAnswer[] {
  for (const [at, factor] of asked.entries()) checkFactor(factor, at)
  const risks = procedureNamed(procedure, procedures).risks.map(({ outcome }) => outcome)
  const answered = answeredQuestions(species, procedure, studies)
    .filter((question) => question.unit === unit)
    .map(({ outcome }) => outcome)
  const brought = Object.keys(own) as OutcomeCode[]
  return [...new Set([...risks, ...answered, ...brought])].map((outcome) => {
    const question = { species, procedure, unit, outcome }
    const ours = own[outcome]
    const counted: OwnApproved | null = ours ? { ...unapproved, ...ours, lost: ours.lost ?? 0 } : null
    const told = toldOf(question, { ...publishedEvidence, ownOf: () => counted })
    return publishedAnswer(outcome, told, asked)
  })
}

const unapproved = { from: null, until: null, asOf: '' } as const

function publishedAnswer(outcome: OutcomeCode, told: Told, asked: readonly string[]): OddsAnswer {
  const { published, expected, own, updated } = told
  const conflict = conflictOf(told)
  const {
    middle,
    low,
    high,
    sentence,
    own: ownSentences,
  } = sayTold(told, {
    odds: oddsInEnglish,
    told: toldInEnglish,
  })
  const found = foundIn(published)
  const facts = [...found.map(({ row }) => row), ...(expected ? [evidenceRules.priors] : []), ...told.quoted]
  const base = updated?.distribution ?? expected?.predictive.distribution ?? null
  return {
    outcome,
    published: expected && {
      ...publishedPart(expected.predictive.distribution),
      studies: expected.studies,
    },
    own: own && ownPart(own),
    updated: updated?.trusted ? updatedPart(updated, updated.weakWeight) : null,
    conflict: conflict && { p: conflict.kind === 'compared' ? conflict.box : null },
    say: { per: 100, middle, low, high, sentence: [sentence, ...ownSentences].join(' ') },
    ...(asked.length > 0 && { modifiers: asked.flatMap((factor) => modifierAnswers(factor, told, base)) }),
    sources: cite(facts, sources),
  }
}
