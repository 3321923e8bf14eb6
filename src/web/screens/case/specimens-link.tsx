import { Link } from 'wouter'
import { cultureInEnglish } from '#content/wording/app-culture.ts'
import { specimensHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'

/** The way to the specimens of the animal and what came back; nothing while none was taken. */
export function SpecimensLink() {
  const { file, id } = useCaseView()
  if (file.theCase.live('specimen').length === 0) return null
  return (
    <p data-screen-only>
      <Link href={specimensHref(id)}>{cultureInEnglish.list.link}</Link>
    </p>
  )
}
