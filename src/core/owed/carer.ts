import type { Provenance } from '#core/evidence/sourced.ts'
import { carerOf } from '#core/home/carer.ts'
import { homePlanOf } from '#core/home/home-plan.ts'
import { surgeonOfEar } from './answerable.ts'
import { endedBy } from './follow-up.ts'
import { rootOf, timesWritten } from './operations.ts'
import type { Draft, OwedItem } from './owed-item.ts'
import { dueWithin } from './results.ts'
import type { Setting } from './setting.ts'

/** Somebody else gives the medicines: until that person has the page that counts, it is owed to them. */
export function owedToCarer(setting: Setting): Draft[] {
  const { theCase } = setting.file
  const plan = homePlanOf(theCase)
  const carer = plan && carerOf(plan, theCase)
  if (!plan || !carer) return []
  const page = plan.changes.at(-1)?.header.id ?? plan.discharge.header.id
  const within = setting.rules.results.ownerToldWithin
  const item = {
    id: `carer-to-tell:${rootOf(theCase, page)}`,
    what: 'carer-to-tell',
    side: null,
    way: 'call',
    withOwner: true,
    ...dueWithin(carer.since, within, setting.zone),
    about: {},
    who: 'nurse',
    person: surgeonOfEar(null, null, setting),
    operation: null,
    why: [{ code: 'carer-without-page', about: {} }],
    facts: [within as Provenance],
    revision: setting.revision + timesWritten(theCase, 'medicine-change', () => true),
  } as const satisfies OwedItem
  return [endedBy(item, carer.by ?? undefined)]
}
