import { pauseInEnglish as words } from '#content/wording/app-pause.ts'
import { roomInEnglish } from '#content/wording/app-room.ts'
import { authorNamed, personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import type { PauseAnswer } from '#core/theatre/pause-run.ts'
import { clockOf } from '#core/time/moment.ts'
import { useCaseView } from '../../case-view.ts'
import room from '../room.module.css'

/** One answer that stands: what, who, when, why not, and whether it is sent yet. */
export function Answered({ answer }: { readonly answer: PauseAnswer }) {
  const { file, unsent } = useCaseView()
  const { header, body, at } = answer
  const waits = unsent.has(header.id)
  const said = fill(words.said, {
    answer: words.answers[body.answer],
    spoke: personNamed(file, body.spokenBy),
    at: clockOf(at, header.happenedAt.zone),
  })
  const led = body.ledBy === null ? words.notSaid : personNamed(file, body.ledBy)
  return (
    <div>
      <p className={room.stamped}>
        <strong className={body.answer === 'yes' ? undefined : room.stop}>{said}</strong>{' '}
        <span className={room.kept} data-waits={waits}>
          {waits ? roomInEnglish.here : roomInEnglish.sent}
        </span>
      </p>
      {body.because !== null && <p>{body.because}</p>}
      <p className="soft">{fill(words.led, { who: led, writer: authorNamed(file, header.author) })}</p>
    </div>
  )
}
