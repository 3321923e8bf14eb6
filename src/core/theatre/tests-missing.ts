import type { CaseFile } from '#core/journal/clinic.ts'
import type { KindName } from '#core/journal/fold.ts'
import type { Level } from '#core/outcome/finding.ts'
import { type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import type { TheatreTests } from '#core/procedures/follow-up.ts'
import { bloodTypeOf } from '#core/workup/blood-type.ts'
import { assessmentOf } from './assessment-of.ts'

type Test = keyof TheatreTests
export type MissingTest = {
  readonly code: Test
  readonly level: Level
  readonly settledBy: KindName
  readonly about: Readonly<Record<string, string>>
  readonly sources: readonly string[]
}

const settledBy = {
  'blood-cells': 'blood-test',
  'blood-chemistry': 'blood-test',
  clotting: 'blood-test',
  'blood-type': 'blood-type',
  assessment: 'anaesthetic-assessment',
  jaw: 'anaesthetic-assessment',
} as const satisfies Record<Test, KindName>

/**
 * Bloods, blood group, class and airway that nobody wrote down before this operation. How much each weighs comes from
 * the rules, with its source; of an animal whose species nobody wrote, the heavier of the two counts.
 */
export function testsMissing(operation: OperationOnFile, file: CaseFile, tests: TheatreTests): MissingTest[] {
  const { theCase } = file
  const species = theCase.latest('identity')?.body.species ?? 'cat'
  return open(operation, file).map(({ test, about }) => {
    const { value, sources } = tests[test]
    return { code: test, level: value[species], settledBy: settledBy[test], about, sources }
  })
}

type Open = { readonly test: Test; readonly about: Readonly<Record<string, string>> }

function open(operation: OperationOnFile, { theCase }: CaseFile): Open[] {
  const measured = theCase.live('blood-test').filter(({ at }) => at <= operation.moment.at)
  const panels = new Set(measured.map(({ body }) => body.panel))
  const type = bloodTypeOf(theCase)
  const assessment = assessmentOf(operation, operationsOf({ theCase }), theCase)
  return [
    ...(panels.has('haematology') ? [] : [lacks('blood-cells')]),
    ...(panels.has('chemistry') ? [] : [lacks('blood-chemistry')]),
    ...(panels.has('clotting') ? [] : [lacks('clotting')]),
    ...(type.kind === 'known' ? [] : [lacks('blood-type', { because: type.because })]),
    ...(assessment ? [] : [lacks('assessment')]),
    ...(assessment?.body.jawOpens === 'not-assessed' ? [lacks('jaw')] : []),
  ]
}

function lacks(test: Test, about: Open['about'] = {}): Open {
  return { test, about }
}
