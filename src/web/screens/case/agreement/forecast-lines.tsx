import { Link } from 'wouter'
import { costRules } from '#content/follow-up/cost-rules.ts'
import { agreementPage } from '#content/wording/app-agreement.ts'
import { agreedLimit } from '#core/agreement/agreed-limit.ts'
import { forecastOf } from '#core/agreement/forecast.ts'
import { sayMoney } from '#core/agreement/money.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayMoment } from '#core/time/moment.ts'
import { Notice } from '../../../design/notice.tsx'
import { writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'

const words = agreementPage.forecast

/** What it has cost and comes to, against the ceiling; a call is asked for before it is passed, and the last one is said. */
export function ForecastLines() {
  const { file, id, owed } = useCaseView()
  const costs = file.theCase.live('cost-so-far')
  const limit = agreedLimit(file.theCase, null)
  const link = (
    <p data-screen-only>
      <Link href={writeHref(id, 'cost-so-far')}>{words.write}</Link>
    </p>
  )
  const [first] = costs
  if (!first || !limit) return link
  const found = forecastOf(
    limit,
    costs.map(({ body }) => body),
    costRules.askFrom.value,
  )
  if (found.kind === 'refusal') {
    return (
      <Notice tone="warn">
        <p>{words.mixed}</p>
        {link}
      </Notice>
    )
  }
  const { spent, low, high, nearness } = found.answer
  const asked = owed.find(({ what }) => what === 'owner-about-costs')
  const call = file.theCase
    .live('call')
    .findLast(({ body, at }) => body.about === 'estimate' && body.reached === 'yes' && at >= first.at)
  const about = { spent: sayMoney(spent), low: sayMoney(low), high: sayMoney(high), ceiling: sayMoney(limit.ceiling) }
  return (
    <Notice tone={nearness === 'within' ? 'plain' : 'warn'}>
      <p>
        <strong>{fill(words.said, about)}</strong>
      </p>
      <p>{fill(words[nearness], { percent: costRules.askFrom.value })}</p>
      {call && <p>{fill(words.called, { when: sayMoment({ ...call.header.happenedAt, zone: file.clinic.zone }) })}</p>}
      {asked && (
        <p data-screen-only>
          <Link href={writeHref(id, 'call', { owed: asked.id })}>{words.call}</Link>
        </p>
      )}
      {link}
    </Notice>
  )
}
