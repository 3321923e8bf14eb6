import { Link } from 'wouter'
import { keptInEnglish as words } from '#content/wording/app-kept.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type KindName, kindNamed } from '#core/journal/fold.ts'
import { writersOf } from '#core/people/may-write.ts'
import { entryKind } from '../../forms/forms.ts'
import { useWho } from '../../session/use-who.ts'
import { writeHref } from '../case/case-hrefs.ts'

/** To the form of an entry that was refused, filled in with what it says; only for whom the form is open. */
export default function CorrectLink({ entry: { id, kind, stream } }: { readonly entry: Entry }) {
  const { me } = useWho()
  if (!kindNamed(kind)) return null
  const { place, amendable } = entryKind(kind as KindName)
  if (place !== 'case' || !amendable || !writersOf(kind).includes(me.role)) return null
  return (
    <li>
      <Link href={writeHref(stream.replace(/^case:/, ''), kind, { amend: id })}>{words.correct}</Link>
    </li>
  )
}
