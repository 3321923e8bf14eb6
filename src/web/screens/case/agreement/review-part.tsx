import { useState } from 'react'
import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { namesInEnglish } from '#content/wording/app-case.ts'
import { sayMoney } from '#core/agreement/money.ts'
import { contactNamed, personNamed } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { TextField } from '../../../design/text-field.tsx'
import { WithSides } from '../../../design/with-sides.tsx'
import { useCaseView } from '../case-view.ts'
import styles from './agreement.module.css'
import { sayLanguage } from './say-language.ts'
import { SignaturePad } from './signature-pad.tsx'
import type { Talk } from './use-talk.ts'

type Body = BodyOf<'agreement'>

/** Everything once more before anybody signs; any line can still be changed, and nothing is kept before the last tap. */
export function ReviewPart(props: { readonly talk: Talk; readonly body: Body; readonly onKept: () => void }) {
  const { talk, body, onKept } = props
  const { file } = useCaseView()
  const { talk: said, sign, review, faults, keep } = talk
  const [busy, setBusy] = useState(false)
  const agree = async () => {
    if (busy || faults.length > 0) return
    setBusy(true)
    await keep()
    onKept()
  }
  return (
    <section className={styles.review} aria-label={words.reviewTitle}>
      <h2>{words.reviewTitle}</h2>
      <p>{words.reviewLead}</p>
      <dl>
        {rowsOf(body, file).map(([term, value]) => (
          <div key={term}>
            <dt>
              <WithSides text={term} />
            </dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {said.given === 'signed-here' && (
        <>
          <h3>{words.sign}</h3>
          <SignaturePad strokes={said.strokes} onStrokes={(strokes) => sign({ strokes })} />
          <div data-screen-only>
            <TextField
              label={words.typed}
              help={words.typedHelp}
              autoComplete="off"
              value={said.name}
              onText={(name) => sign({ name })}
            />
          </div>
          {talk.faultsIn('signature').map((fault) => (
            <p key={fault}>{fault}</p>
          ))}
        </>
      )}
      <p className="row">
        <button type="button" data-weight="main" disabled={busy || faults.length > 0} onClick={() => void agree()}>
          {words.agree}
        </button>
        <button type="button" onClick={() => review(false)}>
          {words.back}
        </button>
      </p>
    </section>
  )
}

function rowsOf(body: Body, file: Parameters<typeof personNamed>[0] & Parameters<typeof contactNamed>[0]) {
  const { plan, estimate } = body
  const taught = body.teachBack.map(({ item, answer, again }) => {
    const name = item === 'medicines' ? item : words.taught[item]
    return `${name}: ${[answer, ...(again === null ? [] : [again])].map((one) => words.answers[one]).join(' → ')}`
  })
  return [
    ...plan.ears.map(
      ({ side, procedure }) => [fill(words.earName, { side }), namesInEnglish.procedures[procedure]] as const,
    ),
    [words.surgeon, personNamed(file, plan.surgeon)],
    [words.summary.costs, fill(words.summary.range, { low: sayMoney(estimate.low), high: sayMoney(estimate.high) })],
    [words.summary.ceiling, sayMoney(plan.ceiling)],
    [words.summary.who, `${contactNamed(file, body.consentBy)}, ${words.authorityOf[body.authority]}`],
    [words.resuscitate, words.resuscitates[body.resuscitate]],
    [words.mayExtend, [words.mayExtends[plan.mayExtend], ...(plan.extension ? [plan.extension] : [])].join(': ')],
    [words.photographs, words.photographsSaid[body.photographs]],
    [words.summary.taught, taught.join('; ')],
    [words.summary.leaflet, fill(words.summary.told, { leaflet: plan.leaflet, language: sayLanguage(plan.language) })],
    ...(plan.numbers.length === 0
      ? []
      : [[words.summary.numbers, sayCount(words.numbers, plan.numbers.length)] as const]),
    [words.explainedBy, personNamed(file, body.explainedBy)],
    [words.given, body.given === 'not-recorded' ? '' : words.givens[body.given]],
    [words.witness, body.witness === null ? words.noWitness : personNamed(file, body.witness)],
  ] as const
}
