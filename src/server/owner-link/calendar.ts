import type { Hono } from 'hono'
import { owedRules } from '#content/follow-up/owed-rules.ts'
import { procedures } from '#content/procedures/index.ts'
import { owedOf } from '#core/owed/owed.ts'
import { calendarOf } from '#documents/calendar/calendar.ts'
import { isHome } from '#documents/owner-link/destinations.ts'
import { languageFor } from '#documents/owner-page/words.ts'
import type { MakeWorld } from '../world.ts'
import { behindLink, closedFor } from './behind-link.ts'

/**
 * The calendar of the owner, with the name of the animal and no more. After a death it is given out still: every date in
 * it is cancelled, so that no telephone goes on reminding a house that mourns.
 */
export function offerCalendar(app: Hono, worldOf: MakeWorld): void {
  app.get('/o/:token/calendar.ics', (c) =>
    behindLink(
      c,
      worldOf,
      async ({ input, opened, world }) => {
        if (!isHome(input)) return c.html(await closedFor(c, world, false), 404)
        const { file, now } = opened
        const owed = owedOf(file, procedures, { rules: owedRules })
        const language = languageFor(input.asked.language, file.theCase.latest('household')?.body.language)
        return c.body(calendarOf(file, owed, now, { language }), 200, {
          'content-type': 'text/calendar; charset=utf-8',
          'content-disposition': 'attachment; filename="calendar.ics"',
        })
      },
      'also-after-death',
    ),
  )
}
