import type { BodyOf, Line } from '#core/journal/fold.ts'
import { readPain } from '#core/ward/pain-scale.ts'
import { rootOf } from './operations.ts'
import type { Draft, OwedItem, Why } from './owed-item.ts'
import { earlierOf, type Setting } from './setting.ts'

type Score = Line<BodyOf<'ward-score'>>

/** Score, action, score again: a score that asks for relief and a time that was set stay open until answered. */
export function owedInWard(setting: Setting): Draft[] {
  return setting.file.theCase
    .live('ward-score')
    .flatMap((score) => [...toTreat(score, setting), ...again(score, setting)])
}

function toTreat(score: Score, setting: Setting): Draft[] {
  const { pain, action } = score.body
  if (pain === null || action !== null) return []
  const { theCase } = setting.file
  const scales = setting.rules.painScales
  const read = readPain(pain, theCase.latest('identity')?.body.species ?? null, scales)
  if (read.kind !== 'act') return []
  const { outOf } = scales[pain.scale].value
  const about = { score: String(pain.score), outOf: String(outOf), actAt: String(read.actAt), scale: pain.scale }
  const item = itemOf(score, 'pain-to-treat', score.at, { code: 'score-asks-for-relief', about }, setting)
  const given = theCase.live('drug-given').find(({ at }) => at >= score.at)
  return [ended({ ...item, about, facts: [scales[pain.scale]] }, [given, scoredAfter(score, setting)], score, setting)]
}

function again(score: Score, setting: Setting): Draft[] {
  const { rescoreAt } = score.body
  if (rescoreAt === null) return []
  const item = itemOf(score, 'pain-again', rescoreAt.at, { code: 'score-again-set', about: {} }, setting)
  return [ended(item, [scoredAfter(score, setting)], score, setting)]
}

function itemOf(
  score: Score,
  what: 'pain-to-treat' | 'pain-again',
  dueBy: string,
  why: Why,
  setting: Setting,
): OwedItem {
  return {
    id: `${what}:${rootOf(setting.file.theCase, score.header.id)}`,
    what,
    about: {},
    who: 'nurse',
    person: null,
    way: 'here',
    dueFrom: earlierOf(score.at, dueBy),
    dueBy,
    zone: setting.zone,
    precision: 'minute',
    side: null,
    operation: null,
    why: [why],
    facts: [],
    withOwner: true,
    revision: setting.revision + score.header.supersedes.length,
  }
}

/** The next time that pain was scored, on either form. Asleep and not scored does not count. */
function scoredAfter(score: Score, { file: { theCase } }: Setting): Pick<Line, 'at' | 'header'> | undefined {
  const scores = [...theCase.live('ward-score'), ...theCase.live('observation')]
  return scores.filter(({ at, body }) => at > score.at && body.pain !== null).sort((a, b) => (a.at < b.at ? -1 : 1))[0]
}

/** Settled by the earliest of what answers it; at home nobody of us scores any more. */
function ended(
  item: OwedItem,
  answers: readonly (Pick<Line, 'at' | 'header'> | undefined)[],
  score: Score,
  { file: { theCase } }: Setting,
): Draft {
  const answer = answers.flatMap((line) => (line ? [line] : [])).sort((a, b) => (a.at < b.at ? -1 : 1))[0]
  const home = theCase.live('discharge').find(({ at }) => at >= score.at)
  if (answer && !(home && home.at < answer.at)) {
    const late = answer.at > item.dueBy && item.what === 'pain-again'
    return { item, ended: { because: late ? 'settled-late' : 'settled', by: answer.header.id } }
  }
  return { item, ended: home ? { because: 'not-needed', by: home.header.id } : null }
}
