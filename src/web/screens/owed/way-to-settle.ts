import type { KindName } from '#core/journal/fold.ts'
import { owedCodeOf, settledBy } from '#core/owed/owed-code-of.ts'
import { writersOf } from '#core/people/may-write.ts'
import { caseHref, owedHref } from '../../journal/hrefs.ts'
import { conflictHref, writeHref } from '../case/case-hrefs.ts'
import { owedScreenOf } from '../case/owed-screen.ts'

/** One step from the list to what settles a row: its form, its conflict, its paper in the tray, its register. */
export type WayToSettle = {
  readonly href: string
  readonly how: 'write' | 'conflict' | 'file' | 'register' | 'figures'
}

/**
 * Null where nothing is written to settle it, where it is settled elsewhere, or where this role may not write it: then
 * the page of the case says what to do.
 *
 * @example wayToSettle({ stream: 'case:tansy', id: 'suture-check:operation-tansy' }, 'nurse')?.how // 'write'
 */
export function wayToSettle(
  { stream, id }: { readonly stream: string; readonly id: string },
  role: string,
): WayToSettle | null {
  const [word, about = ''] = id.split(':')
  if (word === 'arrived-paper') return { href: `${caseHref(stream)}?file=${encodeURIComponent(about)}`, how: 'file' }
  if (word === 'figures-to-approve') {
    const may = (writersOf('figures-approved') as readonly string[]).includes(role)
    return may ? { href: owedHref({ stream, id }), how: 'figures' } : null
  }
  if (word?.startsWith('register-')) return { href: owedHref({ stream, id }), how: 'register' }
  const place = stream.replace(/^case:/, '')
  if (word === 'conflict-to-settle') {
    const [first = ''] = about.split('+')
    return { href: conflictHref(place, first), how: 'conflict' }
  }
  if (word === 'report-erratum')
    return writersOf('report-erratum').some((one) => one === role) ? { href: '/results/years', how: 'write' } : null
  const code = owedCodeOf(id)
  const kind: KindName | null = code === undefined ? null : settledBy[code]
  if (kind === null || kind === 'house-policy') return null
  const roles: readonly string[] = writersOf(kind)
  const screen = owedScreenOf(place, id)
  if (screen !== null) return roles.includes(role) ? { href: screen, how: 'write' } : null
  return roles.includes(role) ? { href: writeHref(place, kind, { owed: id }), how: 'write' } : null
}
