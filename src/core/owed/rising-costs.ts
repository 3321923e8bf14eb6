import { agreedLimit } from '#core/agreement/agreed-limit.ts'
import { newestEstimate } from '#core/agreement/estimate.ts'
import { type Forecast, forecastOf, type Nearness } from '#core/agreement/forecast.ts'
import { sayMoney } from '#core/agreement/money.ts'
import { compareText } from '#core/journal/compare-text.ts'
import { rootOf, timesWritten } from './operations.ts'
import type { Draft, OwedItem, Why } from './owed-item.ts'
import { dueWithin } from './results.ts'
import { earlierOf, type Setting } from './setting.ts'

/** How it stood at a moment: nothing can be forecast where two currencies have no sum. */
type Standing = { readonly near: Nearness | 'without-sum'; readonly why: Why }

/** One asking of the owner: since when, how bad it has become, and when the ceiling was passed. */
type Asking = {
  readonly from: string
  readonly entry: string
  near: Standing['near']
  why: Why
  passedAt: string | null
  within: { readonly at: string; readonly by: string } | null
}

const order: readonly Standing['near'][] = ['within', 'without-sum', 'ask', 'may-pass', 'will-pass', 'passed']
const whyOf = {
  'without-sum': 'costs-without-sum',
  within: 'costs-ask',
  ask: 'costs-ask',
  'may-pass': 'costs-may-pass',
  'will-pass': 'costs-will-pass',
  passed: 'costs-passed',
} as const satisfies Record<Standing['near'], Why['code']>

/** The call before the ceiling is passed, and the answer to an edition of the estimate that took the place of another. */
export function owedAsCostsRise(setting: Setting): Draft[] {
  return [...askings(setting).map((asking) => callOwed(asking, setting)), ...answersOwed(setting)]
}

/**
 * A new asking begins when the forecast leaves the ceiling's safe side, and when it has become worse since the owner was
 * last reached: a call about "it may" is no call about "it did".
 */
function askings(setting: Setting): Asking[] {
  const { theCase } = setting.file
  const calls = callsAbout(setting)
  const found: Asking[] = []
  for (const { at, entry } of momentsOf(setting)) {
    const { near, why } = standingAt(at, setting)
    const last = found.at(-1)
    const open = last && last.within === null ? last : null
    if (near === 'within') {
      if (open) open.within = { at, by: entry }
      continue
    }
    const isWorse = open !== null && order.indexOf(near) > order.indexOf(open.near)
    const wasHeard = open !== null && calls.some((call) => call.at >= open.from && call.at < at)
    const passedAt = near === 'passed' ? at : null
    if (!open || (isWorse && wasHeard)) {
      found.push({ from: at, entry: rootOf(theCase, entry), near, why, passedAt, within: null })
    } else if (!wasHeard) {
      open.near = near
      open.why = why
      open.passedAt ??= passedAt
    }
  }
  return found
}

function callsAbout({ file }: Setting) {
  return file.theCase.live('call').filter(({ body }) => body.about === 'estimate' && body.reached === 'yes')
}

/** From the first cost on, every moment at which the forecast can have changed, with what was written then. */
function momentsOf({ file: { theCase } }: Setting): { readonly at: string; readonly entry: string }[] {
  const costs = theCase.live('cost-so-far').map(({ at, header }) => ({ at, entry: header.id }))
  const [first] = costs
  if (!first) return []
  const editions = theCase.live('estimate').flatMap(({ at, header, body }) => {
    const answered = body.answer?.on.at
    return [at, ...(answered === undefined ? [] : [answered])].map((moment) => ({ at: moment, entry: header.id }))
  })
  const later = [...costs, ...editions].filter(({ at }) => at >= first.at).sort((a, b) => compareText(a.at, b.at))
  return later.filter(({ at }, index) => later[index - 1]?.at !== at)
}

function standingAt(at: string, { file: { theCase }, rules }: Setting): Standing {
  const limit = agreedLimit(theCase, at)
  const costs = theCase.live('cost-so-far').filter((cost) => cost.at <= at)
  if (!limit) return { near: 'within', why: { code: 'costs-ask', about: {} } }
  const found = forecastOf(
    limit,
    costs.map(({ body }) => body),
    rules.costs.askFrom.value,
  )
  if (found.kind === 'refusal') return { near: 'without-sum', why: { code: 'costs-without-sum', about: {} } }
  const { nearness: near } = found.answer
  return { near, why: { code: whyOf[near], about: sums(found.answer, sayMoney(limit.ceiling)) } }
}

function sums({ spent, low, high }: Forecast, ceiling: string): Record<string, string> {
  return { spent: sayMoney(spent), low: sayMoney(low), high: sayMoney(high), ceiling }
}

function callOwed({ from, entry, why, passedAt, within }: Asking, setting: Setting): Draft {
  const { rules, zone } = setting
  const due = dueWithin(from, rules.costs.callWithin, zone)
  const item = owed(setting, {
    ...due,
    dueBy: passedAt === null ? due.dueBy : earlierOf(due.dueBy, passedAt),
    id: `owner-about-costs:${entry}`,
    what: 'owner-about-costs',
    about: {},
    way: 'call',
    why: [why],
    facts: [rules.costs.askFrom, rules.costs.callWithin],
  })
  const call = callsAbout(setting).find(({ at }) => at >= from)
  if (call && (within === null || call.at <= within.at)) {
    return { item, ended: { because: call.at > item.dueBy ? 'settled-late' : 'settled', by: call.header.id } }
  }
  return { item, ended: within && { because: 'not-needed', by: within.by } }
}

/** Silence is never a yes: an edition that took the place of another waits for an answer with its date. */
function answersOwed(setting: Setting): Draft[] {
  const { rules, zone, file } = setting
  const { theCase } = file
  const editions = theCase.live('estimate')
  const first = Math.min(...editions.map(({ body }) => body.edition))
  const newest = newestEstimate(theCase)
  return editions
    .filter(({ body }) => body.edition > first)
    .map(({ at, header, body: { edition, answer } }): Draft => {
      const about = { edition: String(edition) }
      const item = owed(setting, {
        ...dueWithin(at, rules.costs.answerWithin, zone),
        id: `estimate-to-answer:${rootOf(theCase, header.id)}`,
        what: 'estimate-to-answer',
        about,
        way: 'task',
        why: [{ code: 'edition-unanswered', about }],
        facts: [rules.costs.answerWithin],
      })
      if (answer) {
        return { item, ended: { because: answer.on.at > item.dueBy ? 'settled-late' : 'settled', by: header.id } }
      }
      if (newest && newest.body.edition > edition) {
        return { item, ended: { because: 'not-needed', by: newest.header.id } }
      }
      return { item, ended: null }
    })
}

type Wanted = Omit<OwedItem, 'who' | 'person' | 'side' | 'operation' | 'withOwner' | 'revision'>

function owed(setting: Setting, wanted: Wanted): OwedItem {
  const { theCase } = setting.file
  const written = (['estimate', 'cost-so-far'] as const).map((kind) => timesWritten(theCase, kind, () => true))
  const revision = written.reduce((sum, times) => sum + times, setting.revision)
  return { ...wanted, who: 'desk', person: null, side: null, operation: null, withOwner: true, revision }
}
