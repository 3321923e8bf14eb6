import { caseHref } from '../../journal/hrefs.ts'
import { agreementHref, besideHref, lateHref, pauseHref, reportHref, wardPageHref, withdrawHref } from './case-hrefs.ts'

/** The part of the round of an animal that answers what its pain asks for. */
export const painParts: Readonly<Record<string, string>> = {
  'ward-pain': 'pain',
  'pain-again': 'pain',
  'pain-to-treat': 'chain',
}

/**
 * The screen of its own on which an owed thing of an operation or of the ward is settled; null where a form does it.
 *
 * @example owedScreenOf('tansy', 'sign-out:operation-tansy') // '/case/tansy/room/operation-tansy/pause/before-leaving?at=end'
 */
export function owedScreenOf(place: string, id: string): string | null {
  const [what, operation = ''] = id.split(':')
  if (what === 'sign-out') return `${pauseHref(place, operation, 'before-leaving')}?at=end`
  if (what === 'owner-about-emergency') return besideHref(place, operation, 'told')
  if (what === 'late-sign-to-settle') return lateHref(place, operation)
  if (what === 'estimate-to-answer') return agreementHref(place)
  if (what === 'unfiled-to-hear') return withdrawHref(place, operation)
  if (what === 'result-to-read' || what === 'result-to-decide') return reportHref(place, operation)
  if (what === 'owner-note-to-answer') return `${caseHref(`case:${place}`)}#owner-note-${operation}`
  const part = painParts[what ?? '']
  return part === undefined ? null : `${wardPageHref(place)}#${part}`
}
