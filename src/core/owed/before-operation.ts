import { type Agreement, agreementFor, isForEar, withdrawnFor } from '#core/agreement/agreed-for.ts'
import { planChanges } from '#core/agreement/plan-changes.ts'
import { type CheckState, checkStates } from '#core/dosing/second-check.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fromStored } from '#core/journal/stored.ts'
import { secondSideOf } from '#core/second-side/second-side.ts'
import { dayOf, instantAfter, startOfDay } from '#core/time/calendar-day.ts'
import { baselineBefore } from './baseline-before.ts'
import { type FastingAnimal, fastingOf } from './fasting.ts'
import type { OperationOnFile } from './operations.ts'
import type { Draft, Ending, OwedItem, Why } from './owed-item.ts'
import { earlierOf, type Setting } from './setting.ts'
import { weighedFor, weighedFrom } from './weighed-for.ts'

type Wanted = Pick<OwedItem, 'what' | 'who' | 'way' | 'dueFrom' | 'facts' | 'withOwner'> & {
  readonly person?: string | null
  readonly dueBy?: string
  readonly about?: OwedItem['about']
  readonly why: readonly Why[]
  readonly precision?: OwedItem['precision']
}

/** What is owed before the skin is cut: baseline, weight, agreement, second check, last meal, admission. */
export function owedBefore(operation: OperationOnFile, setting: Setting): Draft[] {
  if (!operation.booking) return []
  return [
    baselineOwed(operation, setting),
    weightOwed(operation, setting),
    consentOwed(operation, setting),
    ...secondCheckOwed(operation, setting),
    ...arrivalOwed(operation, setting),
  ]
}

function draft(operation: OperationOnFile, setting: Setting, wanted: Wanted, settledBy: string | null): Draft {
  const { person = null, dueBy = operation.moment.at, about = {}, precision = 'minute', ...rest } = wanted
  const item: OwedItem = {
    ...rest,
    why: settledBy === null ? rest.why : [{ code: 'asked-every-time', about: {} }],
    id: `${wanted.what}:${operation.id}`,
    about,
    person,
    dueBy,
    precision,
    dueFrom: earlierOf(wanted.dueFrom, dueBy),
    zone: setting.zone,
    side: operation.side,
    operation: operation.id,
    revision: operation.written - 1 + setting.revision,
  }
  return { item, ended: endOf(settledBy, operation) }
}

function endOf(settledBy: string | null, operation: OperationOnFile): { because: Ending; by: string | null } | null {
  if (settledBy !== null) return { because: 'settled', by: settledBy }
  return operation.done ? { because: 'too-late', by: operation.done.by } : null
}

function bookedAt(operation: OperationOnFile): string {
  return operation.booking?.at ?? operation.moment.at
}

function baselineOwed(operation: OperationOnFile, setting: Setting): Draft {
  const made = baselineBefore(operation, setting.operations, setting.file.theCase, operation.moment.at)
  const assessed = made !== undefined && made.body[operation.side].blink !== 'not-assessed'
  const why: Why = made ? { code: 'baseline-blink-not-assessed', about: {} } : { code: 'baseline-none', about: {} }
  return draft(
    operation,
    setting,
    {
      what: 'baseline-before-premedication',
      who: 'surgeon',
      person: operation.surgeon,
      way: 'here',
      dueFrom: bookedAt(operation),
      why: [why],
      facts: [setting.rules.before.baseline],
      withOwner: true,
    },
    assessed ? made.header.id : null,
  )
}

function weightOwed(operation: OperationOnFile, setting: Setting): Draft {
  const rule = setting.rules.before.weightNotOlderThan
  const { theCase } = setting.file
  const since = secondSideOf(operation, setting.operations, theCase)?.since ?? null
  const from = weighedFrom(operation, since, rule.value)
  const weighed = weighedFor(operation, since, theCase, rule.value)
  return draft(
    operation,
    setting,
    {
      what: 'weight-before-operation',
      who: 'nurse',
      way: 'here',
      dueFrom: from,
      why: [{ code: 'weight-not-today', about: { hours: String(rule.value.count) } }],
      facts: [rule],
      withOwner: true,
    },
    weighed?.header.id ?? null,
  )
}

/** Consent is bound to its plan: what the record alone shows as changed or taken back asks again. */
function consentOwed(operation: OperationOnFile, setting: Setting): Draft {
  const { file } = setting
  const agreement = agreementFor(operation, file.theCase)
  const open = agreement ? whyAgain(agreement, operation, setting) : null
  const named = file.theCase.live('agreement').some(({ header }) => header.id === operation.booking?.body.agreement)
  const second = secondSideOf(operation, setting.operations, file.theCase)
  const older = second !== null && file.theCase.live('agreement').some((one) => isForEar(one, operation.side))
  const why: Why['code'] =
    open ?? (older ? 'agreement-before-second-side' : named ? 'agreement-other-plan' : 'no-agreement')
  return draft(
    operation,
    setting,
    {
      what: 'consent-before-operation',
      who: 'surgeon',
      person: operation.surgeon,
      way: 'task',
      dueFrom: bookedAt(operation),
      why: [{ code: why, about: {} }],
      facts: [setting.rules.before.consent],
      withOwner: true,
    },
    agreement && open === null ? agreement.header.id : null,
  )
}

function whyAgain(agreement: Agreement, operation: OperationOnFile, { file }: Setting): Why['code'] | null {
  const done = operation.done !== null
  if (!done && withdrawnFor(agreement, operation.side, file.theCase)) return 'consent-withdrawn'
  const changed = planChanges(agreement, [operation], file, null).map(({ code }) => code)
  if (changed.includes('surgeon') || changed.includes('procedure')) return 'agreement-other-plan'
  return changed.length > 0 && !done ? 'agreement-changed' : null
}

function secondCheckOwed(operation: OperationOnFile, setting: Setting): Draft[] {
  const { theCase } = setting.file
  const lines = linesAbout(theCase, 'planned-line', operation.id)
  const first = lines[0]
  if (!first) return []
  const states = checkStates(theCase, lines, operation.done?.moment.at ?? null)
  const standing = (...kinds: readonly CheckState['kind'][]) =>
    lines.filter(({ header }) => kinds.includes(states.get(header.id)?.kind ?? 'none'))
  const disagreed = standing('disagrees')
  const voided = standing('void')
  const own = standing('same-person')
  const unchecked = standing('none')
  const isOpen = lines.length > standing('agrees', 'nobody-available').length
  const names = (some: typeof lines) => ({ lines: [...new Set(some.map(({ body }) => body.drug))].join(', ') })
  const why: Why[] = [
    ...(disagreed.length > 0 ? [{ code: 'lines-disagree' as const, about: names(disagreed) }] : []),
    ...(voided.length > 0 ? [{ code: 'lines-voided' as const, about: names(voided) }] : []),
    ...(own.length > 0 ? [{ code: 'lines-own-check' as const, about: names(own) }] : []),
    ...(unchecked.length > 0 ? [{ code: 'lines-unchecked' as const, about: names(unchecked) }] : []),
  ]
  const state = states.get(first.header.id)
  const settledBy = isOpen || !state || state.kind === 'none' ? null : state.check.header.id
  const wanted = {
    what: 'second-check-of-lines',
    who: 'anaesthetist',
    person: operation.anaesthetist,
    way: 'task',
    dueFrom: first.at,
    why,
    facts: [setting.rules.before.secondCheck],
    withOwner: true,
  } as const
  return [draft(operation, setting, wanted, settledBy)]
}

/** Last meal and admission at clock times; both are past once the skin is cut. */
function arrivalOwed(operation: OperationOnFile, setting: Setting): Draft[] {
  const { theCase } = setting.file
  const weight = theCase
    .live('weight')
    .filter(({ at }) => at <= operation.moment.at)
    .at(-1)
  const animal: FastingAnimal = {
    born: theCase.latest('identity')?.body.born ?? null,
    weight: weight ? fromStored(weight.body.weight) : null,
  }
  const fasting = fastingOf({ ...operation.moment, zone: setting.zone }, animal, setting.rules.before.fasting)
  const meal: Wanted =
    fasting.kind === 'times'
      ? {
          what: 'last-meal',
          who: 'owner',
          way: 'home',
          dueFrom: fasting.lastMealFrom,
          dueBy: fasting.lastMealBy,
          why: fasting.why,
          facts: fasting.facts,
          withOwner: true,
        }
      : {
          what: 'fasting-to-settle',
          who: 'nurse',
          way: 'task',
          dueFrom: bookedAt(operation),
          why: [{ code: 'fasting-unknown', about: { missing: fasting.missing.join(' and ') } }],
          facts: [setting.rules.before.fasting.grown, setting.rules.before.fasting.youngOrSmall],
          withOwner: true,
        }
  const drafts = [draft(operation, setting, meal, null), draft(operation, setting, admission(operation, setting), null)]
  return drafts.map(({ item }) => ({
    item,
    ended: operation.done ? { because: 'not-needed' as const, by: operation.done.by } : null,
  }))
}

/** No source says how long before anaesthesia an animal comes in: the clinic sets it, or only the day is named. */
function admission(operation: OperationOnFile, setting: Setting): Wanted {
  const policy = setting.policies.set.get('owed.admission-before')
  const common = { what: 'admission', who: 'owner', way: 'visit', withOwner: true } as const
  if (!policy) {
    const dueFrom = startOfDay(dayOf({ at: operation.moment.at, zone: setting.zone }), setting.zone)
    return { ...common, dueFrom, precision: 'day', why: [{ code: 'admission-time-not-set', about: {} }], facts: [] }
  }
  const { from, until } = policy.span
  const back = (count: number) =>
    instantAfter({ at: operation.moment.at, zone: setting.zone }, { count: -count, unit: from.unit })
  return { ...common, dueFrom: back(until.count), dueBy: back(from.count), why: [policy.why], facts: [policy.fact] }
}
