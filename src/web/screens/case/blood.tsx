import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { bloodMarks } from '#content/protocols/blood-marks.ts'
import { bloodPerKg } from '#content/protocols/blood-per-kg.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { bloodMarkActs } from '#content/wording/blood.ts'
import { leanWeight } from '#core/dosing/weight.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { saySubject } from '#core/reading/names-of.ts'
import { type LossSpan, totalLoss } from '#core/theatre/blood-loss.ts'
import { firedMarks } from '#core/theatre/blood-marks.ts'
import { bloodVolume } from '#core/theatre/blood-volume.ts'
import { lossOf } from '#core/theatre/loss-of-entry.ts'
import { sayAmount } from '#core/why/why.ts'
import { whyBloodVolume, whyLoss, whyLossMarks } from '#core/why/why-blood.ts'
import { Caution } from '../../design/caution.tsx'
import { Why } from '../../design/why.tsx'
import { library, useCaseView } from './case-view.ts'
import styles from './panels.module.css'

const words = caseInEnglish.blood
const link = (entry: string) => `#entry-${entry}`

/** Blood volume and loss of one operation, each a span where it is one, each with its "why?". */
export function Blood({ operation }: { readonly operation: OperationOnFile }) {
  const { file } = useCaseView()
  const { theCase } = file
  const losses = linesAbout(theCase, 'blood-loss', operation.id)
  const weighed = theCase.live('weight').findLast((line) => line.at <= operation.moment.at)
  const species = theCase.latest('identity')?.body.species
  const about = saySubject({ kind: 'operation', animal: '', operation: operation.id }, file, library)
  const title = `blood-${operation.id}`
  return (
    <section className={styles.panel} aria-labelledby={title}>
      <h3 id={title}>{fill(words.title, { operation: about })}</h3>
      {species && weighed ? (
        <Figures species={species} weighed={weighed} losses={losses} />
      ) : (
        <p>
          {words.volume}: {words.unknown}, {words.noWeight}
        </p>
      )}
      <Caution />
    </section>
  )
}

function Figures(props: {
  readonly species: 'dog' | 'cat'
  readonly weighed: Line<BodyOf<'weight'>>
  readonly losses: readonly Line<BodyOf<'blood-loss'>>[]
}) {
  const { species, weighed, losses } = props
  // Lean weight in the obese: a share of too much blood would look smaller than it is.
  const weight = leanWeight(
    fromStored(weighed.body.weight),
    weighed.body.bodyCondition ?? undefined,
    dosingRules.weight,
  )
  const perKg = bloodPerKg[species]
  const blood = bloodVolume(weight, perKg).counted
  const judged = losses.map((line) => ({ line, outcome: lossOf(line.body, bloodInSwabs) }))
  const sum = totalLoss(judged.flatMap(({ outcome }) => (outcome.kind === 'answer' ? [outcome.answer] : [])))
  const last = judged.at(-1)
  const mark = sum && firedMarks(sum, blood, bloodMarks).at(-1)
  return (
    <>
      <p className={styles.figure}>
        <span>
          {words.volume}: <strong>{sayAmount(blood)}</strong>
        </span>
        <Why about={words.volume} make={() => whyBloodVolume(weight, perKg, weighed.header.id)} hrefOf={link} />
      </p>
      <p className={styles.figure}>
        <span>
          {words.loss}: <strong>{sum ? saySpan(sum) : words.none}</strong>
        </span>
        {last && <Why about={words.loss} make={() => whyLoss(last.line, last.outcome, bloodInSwabs)} hrefOf={link} />}
      </p>
      {sum && (
        <p className={styles.figure}>
          <span>
            {mark
              ? fill(bloodMarkActs[mark.mark.value.code], { percent: percentOf(mark.mark.value.fraction) })
              : words.noMark}
          </span>
          <Why about={words.marks} make={() => whyLossMarks(sum, blood, bloodMarks)} />
        </p>
      )}
    </>
  )
}

/** At least – at most; one figure where both ends are the same. */
export function saySpan({ atLeast, atMost }: LossSpan): string {
  const about = { atLeast: sayAmount(atLeast), atMost: sayAmount(atMost) }
  return fill(atLeast.value.eq(atMost.value) ? words.exact : words.span, about)
}

/** The mark's own fraction as a percentage in words; the number itself stands in content. */
function percentOf(fraction: string): string {
  return `${Number((Number(fraction) * 100).toPrecision(6))} %`
}
