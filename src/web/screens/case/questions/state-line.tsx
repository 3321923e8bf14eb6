import { questionsApp as words } from '#content/wording/app-questions.ts'
import { authorNamed, contactNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import type { Asking } from '#core/questionnaire/askings.ts'
import { posedIn } from '#core/questionnaire/put-together.ts'
import { channelsIn, triesOf } from '#core/questionnaire/tries.ts'
import { sayDay, sayWhen } from '../../../design/say-when.ts'
import { useMinute } from '../../../journal/use-minute.ts'
import { useCaseView } from '../case-view.ts'

/** How one time of asking stands, in a sentence; with the tries while nobody has answered. */
export function StateLine({ asking }: { readonly asking: Asking }) {
  const { file } = useCaseView()
  const now = useMinute()
  const { state, from, until, answers } = asking
  const { zone } = file.clinic
  const species = file.theCase.latest('identity')?.body.species
  const about = {
    from: sayDay(from, zone),
    until: sayDay(until, zone),
    when: answers ? sayWhen(answers.at, zone) : '',
    who: answers
      ? answers.body.contact === null
        ? authorNamed(file, answers.header.author)
        : contactNamed(file, answers.body.contact)
      : '',
    how: answers ? words.how[answers.body.by] : '',
    count: String(answers?.body.answers.length ?? 0),
    all: String(species ? posedIn(asking, species).length : 0),
  }
  const key = state === 'now' && now > until ? 'late' : state
  const isWaiting = state === 'now' || state === 'begun' || state === 'passed'
  return (
    <>
      {fill(words.states[key], about)} {isWaiting && sayTries(asking, file)}
    </>
  )
}

function sayTries(asking: Asking, file: ReturnType<typeof useCaseView>['file']): string {
  const tries = triesOf(asking, file)
  if (tries.length === 0) return words.tries.none
  const { one, many } = words.tries
  const channels = sayCount(words.channels, channelsIn(tries))
  return fill(tries.length === 1 ? one : many, { count: String(tries.length), channels })
}
