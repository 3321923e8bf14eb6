import { Link } from 'wouter'
import { roomInEnglish as words } from '#content/wording/app-room.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { roomHref } from './case-hrefs.ts'
import { library, useCaseView } from './case-view.ts'

/** The way from an operation to the screen beside its table. */
export function RoomLink({ operation }: { readonly operation: string }) {
  const { file, id } = useCaseView()
  const about = saySubject({ kind: 'operation', animal: '', operation }, file, library)
  return (
    <p data-screen-only>
      <Link href={roomHref(id, operation)} aria-label={`${words.open}: ${about}`}>
        {words.open}
      </Link>
    </p>
  )
}
