import { useState } from 'react'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import { linesOfOperation } from '#core/dosing/from-journal.ts'
import type { LineNow, PlanNow } from '#core/dosing/plan-now.ts'
import { plannedBody } from '#core/dosing/planned-body.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { mayWrite } from '#core/people/may-write.ts'
import { inBothUnits } from '#core/units/show-weight.ts'
import { Notice } from '../../../design/notice.tsx'
import { WithReason } from '../../../design/with-reason.tsx'
import { makeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { useCaseView } from '../case-view.ts'

const words = dosePlanInEnglish.replanAll

/** Lines that would be drawn otherwise now are planned again in one act: the chosen doses stay, the amounts follow. */
export function ReplanAll({ operation, plan }: { readonly operation: OperationOnFile; readonly plan: PlanNow }) {
  const { file } = useCaseView()
  const { me, pen } = useWho()
  const [asking, setAsking] = useState(false)
  const weight = plan.animal?.weight
  const old = plan.lines.filter(({ isOld, now }) => isOld && now !== null && now.verdict !== 'refused')
  if (old.length === 0 || !weight || !mayWrite['planned-line'].some((role) => role === me.role)) return null
  const about = { weight: inBothUnits(weight) }
  const entries = (reason: string) => {
    const asked = linesOfOperation(file.theCase, operation.id).lines
    return old.flatMap(({ entry, now }: LineNow) => {
      const line = asked.find(({ id }) => id === entry.body.line)
      if (!now || now.verdict === 'refused' || !line) return []
      const { because, plan: from, shelfItem } = entry.body
      return [
        makeEntry(pen, {
          kind: 'planned-line',
          stream: file.stream,
          subject: entry.header.subject,
          body: plannedBody(now, { asked: line, because, plan: from, shelfItem, weight }),
          supersedes: [entry.header.id],
          reason,
        }),
      ]
    })
  }
  return (
    <Notice tone="warn" title={words.title}>
      <p>{sayCount(words.help, old.length)}</p>
      <p data-screen-only>
        <button type="button" onClick={() => setAsking(true)}>
          {fill(words.verb, about)}
        </button>
      </p>
      {asking && (
        <WithReason
          title={fill(words.verb, about)}
          help={sayCount(words.help, old.length)}
          because={words.because}
          becauseHelp={words.becauseHelp}
          verb={words.keep}
          close={words.close}
          entries={entries}
          onClose={() => setAsking(false)}
        />
      )}
    </Notice>
  )
}
