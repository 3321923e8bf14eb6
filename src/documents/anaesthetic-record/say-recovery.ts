import { ledgerInEnglish } from '#content/wording/ledger.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { fill } from '#core/outcome/finding.ts'
import type { ActingBlock } from '#core/theatre/block-lasts.ts'
import type { BlockEffect, FirstEvent } from '#core/theatre/recovery.ts'
import { dayOf } from '#core/time/calendar-day.ts'
import { clockOf, sayMoment } from '#core/time/moment.ts'
import { drugName } from '../case/drug-name.ts'
import { sayMinutes } from '../case/say-minutes.ts'

const words = ledgerInEnglish.recovery

export function nameOfEvent({ what, side }: FirstEvent): string {
  return fill(words.events[what], { side: side === null ? '' : papersInEnglish.sides[side] })
}

/** When it was seen and how long after tube out; null as long as nobody wrote it. */
export function saySeen(
  { seen, minutes, how, sided }: FirstEvent,
  tubeOut: string | null,
  zone: string,
): string | null {
  if (!seen) return null
  const sameDay = tubeOut !== null && dayOf({ at: tubeOut, zone }) === dayOf({ at: seen.at, zone })
  const at = sameDay ? clockOf(seen.at, zone) : sayMoment(seen.header.happenedAt)
  return [
    minutes === null ? at : fill(words.after, { at, span: sayMinutes(minutes) }),
    ...(how === 'look' ? [words.look] : []),
    ...(sided ? [] : [words.unsided]),
  ].join('; ')
}

/** One local anaesthetic and until when it may act. */
export function sayBlock({ given, wornOff }: ActingBlock, zone: string): string {
  const about = {
    drug: given.body.written ?? drugName(given.body.drug),
    at: clockOf(given.at, zone),
    where: given.body.site ?? given.body.route,
  }
  return wornOff === null
    ? fill(words.blockUnknown, about)
    : fill(words.block, { ...about, until: clockOf(wornOff, zone) })
}

/** What a missing blink means while a block may act. */
export function sayEffect({ side, until }: BlockEffect, zone: string): string {
  const about = { side: papersInEnglish.sides[side] }
  return until === null
    ? fill(words.effectUnknown, about)
    : fill(words.effect, { ...about, until: clockOf(until, zone) })
}
