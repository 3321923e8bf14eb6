import type { Side } from '#core/animal/species.ts'
import type { BodyOf, Case } from '#core/journal/fold.ts'
import type { ChoiceContent } from './choice-rule.ts'
import type { EarFact } from './ear-fact.ts'
import { known, unknown } from './fact.ts'

/** What the rules ask of the animal around the ear: who it is, its skin, its nerves. */
export function animalFacts(theCase: Case, side: Side, { cockers }: Pick<ChoiceContent, 'cockers'>) {
  const identity = theCase.latest('identity')
  const breed = identity?.body.breed?.trim().toLowerCase() ?? null
  const flat = identity?.body.flatFace ?? 'unknown'
  const id = identity?.header.id
  return {
    cat: identity ? known(identity.body.species === 'cat' ? 'yes' : 'no', id) : unknown,
    'flat-face': flat === 'unknown' ? unknown : known(flat, id),
    cocker: breed === null ? unknown : known(cockers.includes(breed) ? 'yes' : 'no', id),
    ...skinFacts(theCase),
    'nerve-signs': nerveSigns(theCase, side),
  }
}

function skinFacts(theCase: Case): { readonly 'skin-disease': EarFact; readonly 'skin-treated': EarFact } {
  const plan = theCase.latest('skin-plan')
  if (!plan || plan.body.disease === 'not-known-yet') return { 'skin-disease': unknown, 'skin-treated': unknown }
  const { id } = plan.header
  return {
    'skin-disease': known(plan.body.disease === 'none-found' ? 'no' : 'yes', id),
    'skin-treated': known(plan.body.measures.length > 0 ? 'yes' : 'no', id),
  }
}

/** Signs that the caller told count as there; that there are none takes a whole look before any sedative. */
function nerveSigns(theCase: Case, side: Side): EarFact {
  const baseline = theCase.live('baseline').findLast(({ body }) => body.beforeSedation)
  if (baseline) {
    const signs = signsIn(baseline.body, side)
    if (signs.includes('yes')) return known('yes', baseline.header.id)
    if (!signs.includes('unknown')) return known('no', baseline.header.id)
  }
  const called = theCase.latest('referral')
  const told = called?.body.signs.some(
    ({ sign, answer }) => answer === 'yes' && ['head-tilt', 'falling', 'drooped-face'].includes(sign),
  )
  return called && told ? known('yes', called.header.id) : unknown
}

function signsIn(body: BodyOf<'baseline'>, side: Side): ('yes' | 'no' | 'unknown')[] {
  const { blink, lipOrEarDroop, pupil, thirdEyelidUp } = body[side]
  const is = (answer: string, ...well: readonly string[]) =>
    answer === 'not-assessed' ? 'unknown' : well.includes(answer) ? 'no' : 'yes'
  return [
    is(blink, 'normal'),
    is(lipOrEarDroop, 'no'),
    is(pupil, 'normal'),
    is(thirdEyelidUp, 'no'),
    is(body.headTilt, 'none'),
    is(body.nystagmus, 'no'),
    is(body.unsteady, 'no'),
  ]
}
