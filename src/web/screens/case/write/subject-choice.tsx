import { caseInEnglish } from '#content/wording/app-case.ts'
import { isSameSubject } from '#core/chapters/subjects-for.ts'
import type { Subject } from '#core/journal/entry.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { Choices } from '../../../design/choices.tsx'
import { library, useCaseView } from '../case-view.ts'

const words = caseInEnglish.write

/**
 * What the entry is about. One possibility is said; of several none is chosen beforehand, unless the link named it.
 */
export function SubjectChoice(props: {
  readonly subjects: readonly Subject[]
  readonly chosen: Subject | null
  readonly error: string | null
  readonly onChoose: (subject: Subject) => void
}) {
  const { subjects, chosen, error, onChoose } = props
  const { file } = useCaseView()
  const name = (subject: Subject) => {
    const said = saySubject(subject, file, library)
    return said === library.words.unknownOperation ? words.newOperation : said
  }
  const [only] = subjects
  if (only && subjects.length === 1) {
    return (
      <p>
        {words.about}: <strong>{name(only)}</strong>
      </p>
    )
  }
  const places = subjects.map((_, index) => String(index))
  const at = chosen ? subjects.findIndex((subject) => isSameSubject(subject, chosen)) : -1
  const hasSide = subjects.some(({ kind }) => kind === 'ear')
  return (
    <Choices
      legend={words.about}
      {...(hasSide && { help: words.chooseSide })}
      error={error}
      value={at < 0 ? null : String(at)}
      options={places}
      say={(place) => {
        const subject = subjects[Number(place)]
        return subject ? name(subject) : ''
      }}
      onChoose={(place) => {
        const subject = subjects[Number(place)]
        if (subject) onChoose(subject)
      }}
    />
  )
}
