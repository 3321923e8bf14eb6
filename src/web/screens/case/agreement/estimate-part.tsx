import { useState } from 'react'
import { Link } from 'wouter'
import { agreementPage } from '#content/wording/app-agreement.ts'
import { type Estimate, newestEstimate, totalsOf } from '#core/agreement/estimate.ts'
import { sayMoney } from '#core/agreement/money.ts'
import { contactNamed } from '#core/journal/clinic.ts'
import type { Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { secondSideAhead } from '#core/second-side/second-side.ts'
import { sayStoredDay } from '#core/time/calendar-day.ts'
import { sayMoment } from '#core/time/moment.ts'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { Choose } from './choose.tsx'
import { ForecastLines } from './forecast-lines.tsx'
import { Part } from './part.tsx'
import type { Talk } from './use-talk.ts'

const words = agreementPage.estimate

/** The newest edition with its sums and limits, whether it is still valid, and who accepted it when. */
export function EstimatePart({ talk }: { readonly talk: Talk }) {
  const { file, id } = useCaseView()
  const newest = newestEstimate(file.theCase)
  const second = secondSideAhead(file.theCase)?.second
  const older = newest && second && newest.at < second.since
  return (
    <Part name="estimate" talk={talk}>
      {older && (
        <p>
          <strong>
            {fill(words.older, {
              when: sayMoment(newest.header.happenedAt),
              side: second.side,
              first: second.first.side,
            })}
          </strong>
        </p>
      )}
      {newest && <EstimateLines line={newest} talk={talk} mayAccept={!older} />}
      {newest && <ForecastLines />}
      <p data-screen-only>
        <Link href={writeHref(id, 'estimate')}>{newest ? words.next : words.write}</Link>
      </p>
    </Part>
  )
}

function EstimateLines(props: {
  readonly line: Line<Estimate>
  readonly talk: Talk
  /** An estimate of the first side is not accepted for the second. */
  readonly mayAccept: boolean
}) {
  const { line, talk, mayAccept } = props
  const { file } = useCaseView()
  const { body } = line
  const { edition, deposit, paid, ceiling, validUntil, answer } = body
  const totals = totalsOf(body)
  const expired = validUntil < talk.setting.today
  const said = [
    ...(totals.kind === 'answer'
      ? [
          fill(words.range, {
            edition: String(edition),
            low: sayMoney(totals.answer.low),
            high: sayMoney(totals.answer.high),
          }),
        ]
      : []),
    fill(words.ceiling, { ceiling: sayMoney(ceiling) }),
    fill(expired ? words.expired : words.valid, { day: sayStoredDay(validUntil) }),
    deposit === null ? words.noDeposit : fill(words.deposit, { deposit: sayMoney(deposit) }),
    ...(paid === null
      ? deposit === null
        ? []
        : [words.unpaid]
      : [fill(words.paid, { paid: sayMoney(paid.amount), when: sayMoment(paid.on) })]),
    answer === null
      ? words.notAnswered
      : fill(words[answer.said], { who: contactNamed(file, answer.by), when: sayMoment(answer.on) }),
  ]
  return (
    <>
      <ul>
        {said.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
      {answer === null && mayAccept && <AcceptPart line={line} talk={talk} />}
    </>
  )
}

/** Every edition is accepted by somebody, at a moment. */
function AcceptPart({ line, talk }: { readonly line: Line<Estimate>; readonly talk: Talk }) {
  const { file } = useCaseView()
  const { pen } = useWho()
  const [by, setBy] = useState<string | null>(null)
  const accept = async () => {
    if (by === null) return
    const on = { at: new Date().toISOString(), zone: pen.zone, precision: 'minute', by: 'clock' } as const
    const { header, body } = line
    await writeEntry(pen, {
      kind: 'estimate',
      stream: file.stream,
      subject: header.subject,
      happenedAt: header.happenedAt,
      supersedes: [header.id],
      body: { ...body, answer: { said: 'accepted', by, on } },
      reason: words.accept,
    })
  }
  return (
    <div data-screen-only>
      <Choose
        label={fill(words.acceptedBy, { edition: String(line.body.edition) })}
        value={by}
        options={talk.contacts}
        onChoose={setBy}
      />
      <p>
        <button type="button" disabled={by === null} onClick={() => void accept()}>
          {words.accept}
        </button>
      </p>
    </div>
  )
}
