import { Link } from 'wouter'
import { wardInEnglish as words } from '#content/wording/app-ward.ts'
import { stayOf } from '#core/ward/stay.ts'
import { wardPageHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'

/** The way to the round of an animal, as long as it lies in the ward. */
export function WardLink() {
  const { file, id, operations } = useCaseView()
  const stay = stayOf(file.theCase, operations)
  if (!stay || stay.ended || file.theCase.latest('death')) return null
  return (
    <p data-screen-only>
      <Link href={wardPageHref(id)}>{words.openRound}</Link>
    </p>
  )
}
