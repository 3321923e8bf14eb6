import { Link } from 'wouter'
import { lateInEnglish as all, lateSignNames } from '#content/wording/app-late.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import { Notice } from '../../../design/notice.tsx'
import { WithSides } from '../../../design/with-sides.tsx'
import { useLists } from '../../../journal/cases.ts'
import { caseHref } from '../../../journal/hrefs.ts'
import { useIndexEars } from '../../../late/use-index-ears.ts'
import { joinHref, lateHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { saidIn, signsIn, useOpenSigns, useWanted } from './use-told.ts'

const words = all.notice

/** A late sign told in this file that may belong to an operated ear, and those that were put to the ear of another file. */
export function LateNotice() {
  return (
    <>
      <StillOpen />
      <PutElsewhere />
    </>
  )
}

/** Said only where an operated ear fits, or where somebody said before that it is not settled. */
function StillOpen() {
  const { id } = useCaseView()
  const signs = useOpenSigns()
  const sign = signs.find(({ answer }) => answer !== null) ?? signs[0]
  const ears = useIndexEars(useWanted(sign))
  if (!sign) return null
  const fits = ears.kind === 'found' && ears.ears.length > 0
  if (sign.answer === null && !fits) return null
  const { line, told } = sign
  const heard = signsIn(sign).map((one) => lateSignNames[one])
  return (
    <Notice tone="warn" title={fill(words.title, { signs: heard.join(', ') })}>
      <p>{fill(words.told, { when: sayMoment({ ...line.header.happenedAt, at: line.at }), said: saidIn(sign) })}</p>
      <p data-screen-only>
        <Link href={lateHref(id, told)}>{words.say}</Link>
      </p>
    </Notice>
  )
}

/** What stands at an ear of a file that is not joined to this one: said, with the way there and the way to join them. */
function PutElsewhere() {
  const { file, id } = useCaseView()
  const lists = useLists()
  const here = new Set([file.stream, ...file.theCase.lines.map(({ header }) => header.stream)])
  const put = file.theCase.live('late-sign').filter(({ body }) => body.chosen !== null && !here.has(body.chosen.file))
  const nameOf = (stream: string) =>
    (lists.kind === 'read' && lists.value.cases.find((row) => row.stream === stream)?.name) || stream
  return put.map(({ header, body }) => {
    if (body.chosen === null) return null
    const { file: stream, side } = body.chosen
    const name = nameOf(stream)
    return (
      <Notice
        key={header.id}
        title={fill(words.title2, { signs: body.signs.map((one) => lateSignNames[one]).join(', ') })}
      >
        <p>
          <WithSides text={fill(words.chosen, { side, name })} /> {words.notJoined}
        </p>
        <p className="row" data-screen-only>
          <Link href={caseHref(stream)}>{fill(all.open, { name })}</Link>
          <Link href={`${joinHref(id)}?find=${encodeURIComponent(name)}`}>{words.join}</Link>
        </p>
      </Notice>
    )
  })
}
