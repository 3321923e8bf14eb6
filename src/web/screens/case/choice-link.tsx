import { Link } from 'wouter'
import { choiceInEnglish as words } from '#content/wording/app-choice.ts'
import { choiceHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'

/** The way from the chapter to the worksheet of the choice. */
export function ChoiceLink() {
  const { id, file } = useCaseView()
  if (file.theCase.latest('death')) return null
  return (
    <p data-screen-only>
      <Link href={choiceHref(id)}>{words.link}</Link> <span className="soft">{words.linkLead}</span>
    </p>
  )
}
