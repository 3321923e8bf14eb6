import { Link } from 'wouter'
import { usualPlanInEnglish as words } from '#content/wording/app-plan.ts'
import { writersOf } from '#core/people/may-write.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { useWho } from '../../session/use-who.ts'
import { planHref } from './case-hrefs.ts'
import { library, useCaseView } from './case-view.ts'

/** The way from an operation to the house's usual plans, for whoever may write planned lines. */
export function PlanLink({ operation }: { readonly operation: string }) {
  const { file, id } = useCaseView()
  const { me } = useWho()
  if (!writersOf('planned-line').includes(me.role)) return null
  const about = saySubject({ kind: 'operation', animal: '', operation }, file, library)
  return (
    <p data-screen-only>
      <Link href={planHref(id, operation)} aria-label={`${words.link}: ${about}`}>
        {words.link}
      </Link>
    </p>
  )
}
