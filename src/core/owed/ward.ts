import type { BodyOf, Line } from '#core/journal/fold.ts'
import { instantAfter } from '#core/time/calendar-day.ts'
import { type ChainLink, painChain, type Score } from '#core/ward/pain-chain.ts'
import { readPain } from '#core/ward/pain-scale.ts'
import { stayOf } from '#core/ward/stay.ts'
import { windowOf } from './follow-up.ts'
import { rootOf } from './operations.ts'
import type { Draft, OwedItem, Why } from './owed-item.ts'
import { earlierOf, type Setting } from './setting.ts'
import { sayInstant } from './ward-item.ts'
import { dosesInWard, owedOnRounds, painByTheClock } from './ward-rounds.ts'

/**
 * What an animal in the ward is owed: score, action, score again, each open until it is answered, and the rounds as long
 * as it lies there. How the eyes are is asked with the rest of face and eye.
 */
export function owedInWard(setting: Setting): Draft[] {
  const links = painChain(setting.file.theCase, '', setting.rules.ward.relieves.value)
  const chain = links.flatMap((link) => [...toTreat(link, setting), ...again(link, setting)])
  const stay = stayOf(setting.file.theCase, setting.operations)
  if (!stay) return chain
  const waits = chain.some(({ item, ended }) => item.what === 'pain-again' && ended === null)
  return [
    ...chain,
    ...(waits ? [] : [painByTheClock(stay, setting)]),
    ...owedOnRounds(stay, setting),
    ...dosesInWard(stay, setting),
  ]
}

function toTreat({ score, given, unnamed }: ChainLink, setting: Setting): Draft[] {
  const { pain, action } = score.body
  if (pain === null || action !== null || given.length > 0) return []
  const read = readingOf(pain, setting)
  if (read.kind !== 'act') return []
  const { painScales } = setting.rules
  const { outOf } = painScales[pain.scale].value
  const about = { score: String(pain.score), outOf: String(outOf), actAt: String(read.actAt), scale: pain.scale }
  const item = itemOf(score, 'pain-to-treat', score.at, { code: 'score-asks-for-relief', about }, setting)
  const answers = [unnamed[0], scoredAfter(score, setting)]
  return [ended({ ...item, about, facts: [painScales[pain.scale]] }, answers, score, setting)]
}

/** At the time that somebody set; else so long after what was done about a score. */
function again(link: ChainLink, setting: Setting): Draft[] {
  const { score, actedAt } = link
  const { rescoreAt, pain } = score.body
  const answers = [scoredAfter(score, setting)]
  if (rescoreAt !== null) {
    const item = itemOf(score, 'pain-again', rescoreAt.at, { code: 'score-again-set', about: {} }, setting)
    return [ended(item, answers, score, setting)]
  }
  // A dose by the clock after a low score answers nothing; what a person named or wrote as the action does.
  const wasAction = score.body.action !== null || link.given.length > 0
  if (pain === null || actedAt === null || !(wasAction || readingOf(pain, setting).kind === 'act')) return []
  const window = windowOf({ window: setting.rules.ward.every['pain-again'] }, 'owed.ward.pain-again', setting)
  const start = { at: actedAt, zone: setting.zone }
  const why: Why = { code: 'again-after-action', about: { when: sayInstant(actedAt, setting) } }
  const item = itemOf(score, 'pain-again', instantAfter(start, window.span.until), why, setting)
  const timed = { ...item, dueFrom: instantAfter(start, window.span.from), facts: [window.fact] }
  return [ended({ ...timed, why: [why, ...window.why] }, answers, score, setting)]
}

function readingOf(pain: NonNullable<BodyOf<'ward-score'>['pain']>, { file: { theCase }, rules }: Setting) {
  return readPain(pain, theCase.latest('identity')?.body.species ?? null, rules.painScales)
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
