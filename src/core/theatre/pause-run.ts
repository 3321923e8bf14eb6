import { compareText } from '#core/journal/compare-text.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { minutesBetween } from '#core/time/moment.ts'
import type { PauseItem, SpokenPause } from './spoken-pause.ts'

export type PauseAnswer = Line<BodyOf<'pause-item'>>

/** One item of a pause with every live answer to it: two are a conflict. What a house worded itself has its own words as id. */
export type ItemToSay = {
  readonly id: string
  readonly asked: PauseItem | null
  readonly answers: readonly PauseAnswer[]
}

/** From the first answer to the last; no finer than the moments are known. */
export type PauseSpan = { readonly seconds: number; readonly fine: 'second' | 'minute' }

/** How far one spoken pause of one operation is. */
export type PauseRun = {
  readonly pause: SpokenPause['pause']
  /** In the order they are read aloud; what the house worded itself comes last. */
  readonly items: readonly ItemToSay[]
  readonly open: readonly ItemToSay[]
  /** Answered no or not known, or answered twice. */
  readonly unsettled: readonly ItemToSay[]
  /** Null before two answers, and where a moment is known only to the day. */
  readonly span: PauseSpan | null
}

/**
 * One spoken pause as its entries make it: what is answered, what is open, what was not answered with yes.
 *
 * @example pauseRunOf(theCase, operation.id, pauses[1]).open.map(({ id }) => id) // ['concerns']
 */
export function pauseRunOf(theCase: Case, operation: string, { pause, items }: SpokenPause): PauseRun {
  const live = linesAbout(theCase, 'pause-item', operation).filter(({ body }) => body.pause === pause)
  const of = (id: string) => live.filter(({ body }) => body.item === id)
  const known = new Set(items.map(({ id }) => id))
  const own = [...new Set(live.map(({ body }) => body.item))].filter((id) => !known.has(id))
  const all = [
    ...items.map((asked) => ({ id: asked.id, asked, answers: of(asked.id) })),
    ...own.map((id) => ({ id, asked: null, answers: of(id) })),
  ]
  return {
    pause,
    items: all,
    open: all.filter(({ answers }) => answers.length === 0),
    unsettled: all.filter(({ answers }) => answers.length > 1 || answers.some(({ body }) => body.answer !== 'yes')),
    span: spanOf([...live, ...answeredAnew(theCase, live)]),
  }
}

/** Answers that were true when they were spoken and were spoken otherwise later: the pause began with them, too. */
function answeredAnew(theCase: Case, live: readonly PauseAnswer[]): PauseAnswer[] {
  const byId = new Map(theCase.lines.map((line) => [line.header.id, line]))
  const seen = new Set<string>()
  const before = (line: PauseAnswer): PauseAnswer[] =>
    line.header.supersedes.flatMap((id) => {
      // Entries that supersede each other in a ring are read once.
      if (seen.has(id)) return []
      seen.add(id)
      const older = byId.get(id)
      if (older?.header.kind !== 'pause-item' || older.state !== 'superseded' || !older.known || older.body === null)
        return []
      const answer = older as PauseAnswer
      // The same answer, written again, corrects something else: perhaps the very moment.
      return [...(answer.body.answer === line.body.answer ? [] : [answer]), ...before(answer)]
    })
  return live.flatMap(before)
}

function spanOf(answers: readonly PauseAnswer[]): PauseSpan | null {
  if (answers.length < 2) return null
  const precisions = answers.map(({ header }) => header.happenedAt.precision)
  if (precisions.some((one) => one !== 'second' && one !== 'minute')) return null
  const [first = '', ...rest] = answers.map(({ at }) => at).sort()
  const seconds = Math.round(minutesBetween({ at: first }, { at: rest.at(-1) ?? first }) * 60)
  return { seconds, fine: precisions.includes('minute') ? 'minute' : 'second' }
}

/**
 * Which item is shown after this one, and before it; null at the ends, where the summary or the beginning follows.
 *
 * @example besides(run.items, 'concerns').next // null
 */
export function besides(
  items: readonly ItemToSay[],
  id: string,
): { readonly back: string | null; readonly next: string | null } {
  const place = items.findIndex((item) => item.id === id)
  return { back: items[place - 1]?.id ?? null, next: place < 0 ? null : (items[place + 1]?.id ?? null) }
}

/** Who spoke and who led, as this person last wrote it in this pause; nobody before the first answer. */
export function whoLast(
  run: PauseRun,
  writer: string,
): { readonly spokenBy: string | null; readonly ledBy: string | null } {
  const mine = run.items
    .flatMap(({ answers }) => answers)
    .filter(({ header }) => header.author.kind === 'person' && header.author.person === writer)
    .sort((a, b) => compareText(a.header.writtenAt, b.header.writtenAt))
  const last = mine.at(-1)?.body
  return { spokenBy: last?.spokenBy ?? null, ledBy: last?.ledBy ?? null }
}
