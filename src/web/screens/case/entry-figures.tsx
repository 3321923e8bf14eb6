import { triageRules } from '#content/follow-up/triage-rules.ts'
import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { chaptersInEnglish } from '#content/wording/app-chapters.ts'
import { faultsOf, totalsOf } from '#core/agreement/estimate.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sideOf } from '#core/reading/names-of.ts'
import { answersOf, triage } from '#core/referral/triage.ts'
import { lossOf } from '#core/theatre/loss-of-entry.ts'
import { whyLoss } from '#core/why/why-blood.ts'
import { whyUrgency } from '#core/why/why-urgency.ts'
import { Caution } from '../../design/caution.tsx'
import { Why } from '../../design/why.tsx'
import { saySpan } from './blood.tsx'
import { useCaseView } from './case-view.ts'
import { JudgedLine } from './doses.tsx'
import { Otis3Total } from './findings-pair.tsx'
import { GivenDrug } from './given-drug.tsx'
import styles from './panels.module.css'

const words = caseInEnglish

/** What is worked out from one entry, with its "why?": urgency, OTIS-3, dose, loss, what an estimate comes to; and what speaks against a dose given. */
export function EntryFigures({ line }: { readonly line: Line }) {
  const { file } = useCaseView()
  switch (line.header.kind) {
    case 'referral':
      return <Urgency line={line as unknown as Line<BodyOf<'referral'>>} />
    case 'ear-findings': {
      const side = sideOf(line, file)
      return side === null ? null : (
        <>
          <p className={styles.figure}>
            <span>{words.pair.total}:</span>
            <Otis3Total line={line as unknown as Line<BodyOf<'ear-findings'>>} side={side} />
          </p>
          <Caution />
        </>
      )
    }
    case 'planned-line':
      return <JudgedLine entry={line as unknown as Line<BodyOf<'planned-line'>>} />
    case 'estimate':
      return <EstimateTotals body={(line as unknown as Line<BodyOf<'estimate'>>).body} />
    case 'drug-given':
      return <GivenDrug line={line} />
    case 'blood-loss':
      return <Loss line={line as unknown as Line<BodyOf<'blood-loss'>>} />
    default:
      return null
  }
}

function Urgency({ line }: { readonly line: Line<BodyOf<'referral'>> }) {
  const { theCase } = useCaseView().file
  const identity = theCase.latest('identity')?.body ?? null
  return (
    <p className={styles.figure}>
      <span>{words.urgency}</span>
      <Why about={words.urgency} make={() => whyUrgency(triage(answersOf(line.body, identity), triageRules))} />
    </p>
  )
}

/** Low to high against the limit, and what of it does not fit together. */
function EstimateTotals({ body }: { readonly body: BodyOf<'estimate'> }) {
  const { decimalMark } = useCaseView().file.clinic
  const say = ({ amount, currency }: typeof body.ceiling) => `${amount.replace('.', decimalMark)} ${currency}`
  const totals = totalsOf(body)
  const faults = faultsOf(body)
  return (
    <>
      <p className={styles.figure}>
        {totals.kind === 'answer' && (
          <span>
            {words.estimate.total}:{' '}
            <strong>{fill(words.estimate.span, { low: say(totals.answer.low), high: say(totals.answer.high) })}</strong>
          </span>
        )}
        <span>
          {words.estimate.ceiling}: <strong>{say(body.ceiling)}</strong>
        </span>
      </p>
      {faults.map((fault) => (
        <p key={fault}>
          <strong>{fill(words.estimate.fault, { what: chaptersInEnglish.codes[fault] })}</strong>
        </p>
      ))}
    </>
  )
}

function Loss({ line }: { readonly line: Line<BodyOf<'blood-loss'>> }) {
  const outcome = lossOf(line.body, bloodInSwabs)
  const said = outcome.kind === 'answer' ? saySpan(outcome.answer) : words.blood.unknown
  return (
    <>
      <p className={styles.figure}>
        <span>
          {words.blood.lossOfEntry}: <strong>{said}</strong>
        </span>
        <Why about={words.blood.lossOfEntry} make={() => whyLoss(line, outcome, bloodInSwabs)} />
      </p>
      <Caution />
    </>
  )
}
