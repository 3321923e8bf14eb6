import { Link } from 'wouter'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import { fromStored } from '#core/journal/stored.ts'
import { fill } from '#core/outcome/finding.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { assessmentOf } from '#core/theatre/assessment-of.ts'
import { inBothUnits } from '#core/units/show-weight.ts'
import { sayWhen } from '../../../design/say-when.ts'
import { entryHref, writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import styles from './dose-plan.module.css'

const words = dosePlanInEnglish.head

/** What must be in view while doses are planned: the weight and its age, class and airway, the last meal by the clock. */
export function PlanHead({ operation }: { readonly operation: OperationOnFile }) {
  const { file, id, owed, gist, operations } = useCaseView()
  const { theCase, clinic } = file
  const weight = theCase.latest('weight')
  // The one that counts for this operation: an older anaesthetic of the animal says nothing about today.
  const assessment = assessmentOf(operation, operations, theCase)
  const meal = owed.find((item) => item.what === 'last-meal' && item.operation === operation.id)
  const { zone } = clinic
  return (
    <dl className={styles.head} aria-label={words.label}>
      <div>
        <dt>{words.weight}</dt>
        <dd>
          {weight
            ? fill(words.weighed, {
                weight: inBothUnits(fromStored(weight.body.weight)),
                how: caseInEnglish.head.weightHow[weight.body.how],
                when: sayWhen(weight.at, zone),
              })
            : words.noWeight}{' '}
          <Link href={writeHref(id, 'weight')} data-screen-only>
            {words.weigh}
          </Link>
        </dd>
      </div>
      <div>
        <dt>{words.class}</dt>
        <dd>
          {assessment ? (
            <a href={entryHref(id, assessment.header.id)}>{gist(assessment)}</a>
          ) : (
            <>
              {words.noClass}{' '}
              <Link href={writeHref(id, 'anaesthetic-assessment')} data-screen-only>
                {words.writeClass}
              </Link>
            </>
          )}
        </dd>
      </div>
      {!operation.done && (
        <div>
          <dt>{words.meal}</dt>
          <dd>
            {meal
              ? fill(words.mealBetween, { from: sayWhen(meal.dueFrom, zone), until: sayWhen(meal.dueBy, zone) })
              : words.mealUnknown}
          </dd>
        </div>
      )}
    </dl>
  )
}
