import { besideHref, pauseHref } from './case-hrefs.ts'

/**
 * The screen of its own on which an owed thing of an operation is settled; null where a form does it.
 *
 * @example owedScreenOf('tansy', 'sign-out:operation-tansy') // '/case/tansy/room/operation-tansy/pause/before-leaving?at=end'
 */
export function owedScreenOf(place: string, id: string): string | null {
  const [what, operation = ''] = id.split(':')
  if (what === 'sign-out') return `${pauseHref(place, operation, 'before-leaving')}?at=end`
  if (what === 'owner-about-emergency') return besideHref(place, operation, 'told')
  return null
}
