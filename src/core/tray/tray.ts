import type { BodyOf, Case, Line } from '#core/journal/fold.ts'

/** The stream in which everything that came in waits. */
export const trayStream = 'tray'

/** Something that waits, or waited, in the tray. */
type Waiting = Line<BodyOf<'arrived-paper'>>
/** Something that was filed from the tray: what came in, and the `refile` entry that says where its copy stands. */
export type Filed = { readonly arrived: Waiting; readonly refile: Line<BodyOf<'refile'>> }

export type Tray = { readonly waiting: readonly Waiting[]; readonly filed: readonly Filed[] }

/**
 * What waits in the holding tray, oldest first, and what was filed from it, newest first. What was thrown away (a
 * `withdrawal`) is in neither.
 *
 * @example trayOf(fold(entries)).waiting.length // 2
 */
export function trayOf(tray: Case): Tray {
  const refiles = tray.live('refile')
  const filed = refiles.flatMap((refile) => {
    const arrived = tray.line(refile.header.withdraws ?? '')
    return arrived?.header.kind === 'arrived-paper' && arrived.body !== null
      ? [{ arrived: arrived as Waiting, refile }]
      : []
  })
  return { waiting: tray.live('arrived-paper'), filed: filed.reverse() }
}

/**
 * How something that came in was filed, while that filing stands. When its copy is taken back in the case, the filing is
 * taken back too, and what came in waits in the tray again.
 *
 * @example filingOf(fold(entries), arrivedPaper.id)?.refile.header.id
 */
export function filingOf(tray: Case, arrived: string): Filed | undefined {
  return trayOf(tray).filed.find((one) => one.arrived.header.id === arrived)
}

/** The hour and day counts of something that waits: `{ days: 0, hours: 3 }`. Never below nothing, whatever a clock said. */
export function ageOf(since: string, now: string): { readonly days: number; readonly hours: number } {
  const hours = Math.max(0, Math.floor((Date.parse(now) - Date.parse(since)) / 3_600_000))
  return { days: Math.floor(hours / 24), hours: hours % 24 }
}
