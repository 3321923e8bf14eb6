import { homeNowInEnglish as words } from '#content/wording/app-home-now.ts'
import { type Draft, draftAt, textIn, withDraftAt } from '#core/forms/draft.ts'
import { draftOf } from '#core/forms/draft-of.ts'
import type { Place } from '#core/forms/refusal.ts'
import { type HomeCourse, homePlanOf } from '#core/home/home-plan.ts'
import { fill } from '#core/outcome/finding.ts'
import { formFor } from '../../../forms/forms.ts'
import { useCaseView } from '../case-view.ts'

/** Under what stops: each medicine that is given at home, with its name and side as the page has them; from when, a person says. */
export function StopLines(props: {
  readonly draft: Draft
  readonly place: Place
  readonly onDraft: (draft: Draft) => void
}) {
  const { draft, place, onDraft } = props
  const { file } = useCaseView()
  const given = draftAt(draft, 'stops')
  const stops = Array.isArray(given) ? given : []
  const named = new Set(stops.map((stop) => textIn(draftAt(stop, 'label'))))
  const courses = (homePlanOf(file.theCase)?.courses ?? []).filter(
    ({ until, label }) => until === null && !named.has(label),
  )
  if (courses.length === 0) return null
  return (
    <ul className="bare">
      {courses.map((course) => (
        <li key={`${course.entry} ${course.label} ${course.side}`}>
          <button type="button" onClick={() => onDraft(withDraftAt(draft, 'stops', [...stops, stopOf(course, place)]))}>
            {fill(words.stopThis, { medicine: course.label })}
          </button>
        </li>
      ))}
    </ul>
  )
}

/** As a person would have typed it, with the moment left open. */
function stopOf({ drug, label, side }: HomeCourse, place: Place): Draft {
  const stop = { drug, label, side, fromDay: '2026-01-01', fromTime: '00:00' }
  const typed = draftOf(formFor('medicine-change'), { read: null, because: '', stops: [stop], starts: [] }, place)
  const open = withDraftAt(draftAt(typed, 'stops.0'), 'fromDay', '')
  return withDraftAt(open, 'fromTime', '')
}
