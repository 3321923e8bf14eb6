import { otherSide } from '#core/animal/species.ts'
import type { FaceLook } from '#core/procedures/follow-up.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { addDays, dayAfter, dayOf, daysBetween, endOfDay } from '#core/time/calendar-day.ts'
import { type BlockDoubt, type Check, type EyeState, eyeStateOf, isEyeLook } from './eye-state.ts'
import { type DoneOperation, endedBy, itemOf, sayWindow, windowDays, windowOf } from './follow-up.ts'
import { rootOf, timesWritten } from './operations.ts'
import type { Draft, OwedItem, Why } from './owed-item.ts'
import { type DueDates, laterOf, type Setting, visitDays, wholeDays } from './setting.ts'
import { blinkInWard, blinkLooks, presentStay, wettingInWard } from './ward-eyes.ts'

/**
 * Looks at face and eye of an operated ear: the planned ones, then monthly until normal. An eye without a blink, with
 * few tears or a stained cornea is never unseen for two weeks. A missing blink while the block may act is not graded:
 * it is looked at again when the block has worn off, and the eye is lubricated meanwhile.
 */
export function owedFaceAndEye(operation: DoneOperation, setting: Setting): Draft[] {
  const state = eyeStateOf(operation, setting)
  const { faceLooks } = procedureNamed(operation.procedure, setting.procedures).followUp
  const planned =
    faceLooks.kind === 'known' ? faceLooks.fact.map((look) => plannedLook(look, state, operation, setting)) : []
  const open = planned.filter(({ ended }) => ended === null).map(({ item }) => item)
  const further = state.risk.length > 0 ? atRiskLooks(open, state, operation, setting) : []
  const monthly =
    state.risk.length === 0 && open.length === 0 ? monthlyLook(state, faceLooks.kind, operation, setting) : []
  const block = state.block ? [lookAfterBlock(state.block, operation, setting)] : []
  const looks = [...planned, ...further, ...monthly, ...block]
  return [...looks, ...blinkInWard(state, operation, setting), ...lubrication(looks, state, operation, setting)]
}

/**
 * The eye of the side that was not operated: an anaesthetic, a collar or an older disease may leave it without a blink, and it
 * dries out all the same. Nothing is planned there; what a check finds is looked at again, and the eye is kept wet.
 */
export function owedOtherEye(operation: DoneOperation, setting: Setting): Draft[] {
  const side = otherSide(operation.side)
  if (setting.operations.some((one) => one.done && one.side === side)) return []
  const other = { ...operation, side } as const
  const state = eyeStateOf(other, setting)
  if (state.checks.length === 0 || !state.everAtRisk) return []
  const looks = state.risk.length > 0 ? atRiskLooks([], state, other, setting) : []
  return [...looks, ...lubrication(looks, state, other, setting)]
}

function draftItem(
  operation: DoneOperation,
  setting: Setting,
  dates: DueDates,
  rest: Pick<OwedItem, 'id' | 'what' | 'about' | 'who' | 'way' | 'why' | 'facts'>,
): OwedItem {
  const item = itemOf(operation, setting, dates, rest)
  const corrected = timesWritten(setting.file.theCase, 'check', ({ header }) => header.supersedes.length > 0)
  return { ...item, revision: item.revision + corrected }
}

function plannedLook(look: FaceLook, state: EyeState, operation: DoneOperation, setting: Setting): Draft {
  const window = windowOf(look, `owed.face.${look.id}`, setting)
  const days = windowDays(window.span, operation.dayOfOperation)
  const dates =
    look.way === 'visit'
      ? visitDays(days, addDays(operation.dayOfOperation, 1), setting)
      : wholeDays(days, setting.zone)
  const item = draftItem(operation, setting, dates, {
    id: `face:${operation.id}:${operation.side}:${look.id}`,
    what: 'face-and-eye-look',
    about: { look: look.id },
    who: 'nurse',
    way: look.way,
    why: [sayWindow(window.span), ...window.why, ...state.risk],
    facts: [window.fact],
  })
  const seen = state.checks.find((check) => check.at >= dates.dueFrom && countsAsLook(check, state))
  return endedBy(item, seen)
}

/** A photograph is enough for a planned look of an eye that is not at risk. */
function countsAsLook(check: Check, state: EyeState): boolean {
  return isEyeLook(check) && !(state.risk.length > 0 && check.body.seenBy === 'owner-photograph')
}

/**
 * Fills every gap between the planned looks, and adds one after the last, so that an eye at risk is seen at least
 * every two weeks, counted from the last look; once a week is advised.
 */
function atRiskLooks(open: readonly OwedItem[], state: EyeState, operation: DoneOperation, setting: Setting): Draft[] {
  const limit = setting.rules.face.atRiskLimit.value.count
  const seen = dayOf({ at: state.lastSeen.at, zone: setting.zone })
  const found: Draft[] = []
  let previous = seen
  const firstDay = (item: OwedItem) => laterOf(previous, dayOf({ at: item.dueFrom, zone: item.zone }))
  // Counted from the first day of the look before: on whichever day of its window that is made, no gap grows too long.
  const fill = () => {
    const item = atRiskLook(previous, found.length + 1, state, operation, setting)
    previous = firstDay(item)
    found.push({ item, ended: null })
  }
  for (const item of [...open].sort((a, b) => (a.dueBy < b.dueBy ? -1 : 1))) {
    while (daysBetween(previous, dayOf({ at: item.dueBy, zone: item.zone })) > limit) fill()
    previous = firstDay(item)
  }
  fill()
  return found
}

function atRiskLook(
  previous: string,
  index: number,
  state: EyeState,
  operation: DoneOperation,
  setting: Setting,
): OwedItem {
  const { atRiskAgain, atRiskLimit } = setting.rules.face
  const window = { from: dayAfter(previous, atRiskAgain.value), until: dayAfter(previous, atRiskLimit.value) }
  const root = state.lastSeen.by ? rootOf(setting.file.theCase, state.lastSeen.by.header.id) : 'operation'
  return draftItem(operation, setting, visitDays(window, addDays(previous, 1), setting), {
    id: `eye:${operation.id}:${operation.side}:${root}:${index}`,
    what: 'eye-at-risk-look',
    about: {},
    who: 'surgeon',
    way: 'visit',
    why: [...state.risk, { code: 'limit-two-weeks', about: { days: String(atRiskLimit.value.count) } }],
    facts: [atRiskAgain, atRiskLimit],
  })
}

/** After the planned looks, once a month until face and eye are normal; what was never assessed is not normal. */
function monthlyLook(
  state: EyeState,
  planned: 'known' | 'unknown',
  operation: DoneOperation,
  setting: Setting,
): Draft[] {
  const { notNormal, notAssessed, lastSeen } = state
  const missing = planned === 'known' ? notAssessed : []
  if (notNormal.length === 0 && missing.length === 0) return []
  const own = setting.policies.set.get('owed.face.then-every')
  const every = own?.span.until ?? setting.rules.face.thenEvery.value
  const seen = dayOf({ at: lastSeen.at, zone: setting.zone })
  const day = dayAfter(seen, every)
  const why: Why[] = [
    ...(notNormal.length > 0 ? [{ code: 'not-normal-yet' as const, about: { signs: notNormal.join(', ') } }] : []),
    ...(missing.length > 0 ? [{ code: 'not-assessed-yet' as const, about: { signs: missing.join(', ') } }] : []),
    ...(own ? [own.why] : []),
  ]
  const root = lastSeen.by ? rootOf(setting.file.theCase, lastSeen.by.header.id) : 'operation'
  const item = draftItem(operation, setting, visitDays({ from: day, until: day }, addDays(seen, 1), setting), {
    id: `face:${operation.id}:${operation.side}:after:${root}`,
    what: 'face-and-eye-look',
    about: { look: 'monthly' },
    who: 'nurse',
    way: 'visit',
    why,
    facts: [own?.fact ?? setting.rules.face.thenEvery],
  })
  return [{ item, ended: null }]
}

function lookAfterBlock(block: BlockDoubt, operation: DoneOperation, setting: Setting): Draft {
  const { zone, rules } = setting
  const dueFrom = block.wornOff ?? block.check.at
  const days = [addDays(operation.dayOfOperation, 1), dayOf({ at: dueFrom, zone })].sort()
  const rule = rules.blockLasts[block.drug]
  const why: Why = block.wornOff
    ? { code: 'possible-block-effect', about: { drug: block.drug, hours: String(rule?.value.count ?? '') } }
    : { code: 'block-duration-unknown', about: { drug: block.drug } }
  const dates: DueDates = { dueFrom, dueBy: endOfDay(days.at(-1) ?? '', zone), zone, precision: 'minute', moved: [] }
  const item = draftItem(operation, setting, dates, {
    id: `block:${operation.id}:${operation.side}`,
    what: 'look-after-the-block',
    about: { drug: block.drug },
    who: 'nurse',
    way: 'here',
    why: [why],
    facts: rule ? [rule] : [],
  })
  return endedBy(item, block.settledBy ?? undefined)
}

/**
 * The eye is kept wet from the finding until the next look, and until a look finds it out of risk; in the ward also as
 * long as nobody has seen it blink, and there by the clock.
 */
function lubrication(looks: readonly Draft[], state: EyeState, operation: DoneOperation, setting: Setting): Draft[] {
  const doubt = state.block && state.block.settledBy === null ? state.block : null
  const stay = presentStay(operation, setting)
  const unseen = stay !== null && blinkLooks(operation.side, stay, setting).length === 0
  const needed = state.risk.length > 0 || doubt !== null || unseen
  if (!needed && !state.everAtRisk) return []
  const { zone, rules, file } = setting
  const next = looks
    .filter(({ ended }) => ended === null)
    .map(({ item }) => item.dueBy)
    .sort()[0]
  const since = doubt?.check.at ?? state.lastSeen.at
  const until = next !== undefined && next > since ? next : endOfDay(dayOf({ at: since, zone }), zone)
  const wetting = stay ? wettingInWard(operation.side, stay, setting) : null
  const atHome = file.theCase.live('discharge').some(({ at }) => at > operation.moment.at)
  const item = draftItem(
    operation,
    setting,
    {
      dueFrom: wetting?.dueFrom ?? since,
      dueBy: wetting?.dueBy ?? until,
      zone,
      precision: 'minute',
      moved: [],
    },
    {
      id: `lubricate:${operation.id}:${operation.side}`,
      what: 'eye-lubricated',
      about: {},
      who: atHome ? 'owner' : 'nurse',
      way: atHome ? 'home' : 'task',
      why: [
        ...state.risk,
        ...(doubt
          ? [{ code: 'possible-block-effect' as const, about: { drug: doubt.drug, hours: hoursOf(doubt, setting) } }]
          : []),
        ...(wetting?.why ?? []),
        { code: 'lubricate-how', about: { how: rules.face.lubricate.value } },
        { code: unseen ? 'wet-until-blink' : 'until-blink-returns', about: {} },
      ],
      facts: [...(wetting?.facts ?? []), rules.face.lubricate],
    },
  )
  return needed ? [{ item, ended: null }] : [endedBy(item, state.lastSeen.by ?? state.checks.at(-1))]
}

function hoursOf(doubt: BlockDoubt, setting: Setting): string {
  return String(setting.rules.blockLasts[doubt.drug]?.value.count ?? 'an unknown number of')
}
