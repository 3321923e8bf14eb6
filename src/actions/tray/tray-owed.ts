import { trayRules } from '#content/follow-up/tray-rules.ts'
import { trayInEnglish } from '#content/wording/app-tray.ts'
import { fold } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { instantAfter } from '#core/time/calendar-day.ts'
import { trayOf, trayStream } from '#core/tray/tray.ts'
import type { OwedRow, Projected } from '../store.ts'

const words = trayInEnglish.owed

/** Everything in the holding tray is owed a place by the front desk, within the house's time. */
export function trayOwed({ entries }: Pick<Projected, 'entries'>): OwedRow[] {
  const { value, sources } = trayRules.fileWithin
  return trayOf(fold(entries)).waiting.map(({ header, body, at }) => {
    const about = { seems: trayInEnglish.seems[body.seems], from: body.from ?? '' }
    return {
      stream: trayStream,
      id: `arrived-paper:${header.id}`,
      what: fill(body.from === null ? words.what : words.whatFrom, about),
      who: 'desk',
      dueFrom: at,
      dueBy: instantAfter({ at, zone: header.happenedAt.zone }, value),
      why: fill(words.why, { came: trayInEnglish.came[body.came], says: body.says ?? words.saysNothing }),
      sources: [...sources],
    }
  })
}
