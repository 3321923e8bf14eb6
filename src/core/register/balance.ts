import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { Decimal, plain } from '#core/units/quantity.ts'
import { unitWord } from '#core/units/unit-words.ts'
import type { RegisterUnit } from './as-register-unit.ts'
import { ampouleKey, type Draw } from './draws.ts'
import { type RegisterFinding, seen } from './register-findings.ts'
import { isUnwitnessed } from './witness.ts'

type Body = BodyOf<'register-line'>

/** One line with the balance behind it; null where it no longer counts, or cannot be added. */
export type RegisterLine = {
  readonly entry: Line<Body>
  readonly balance: Decimal | null
  readonly draw: Draw | null
}

/** Which way a line moves the balance. A count moves nothing: it is compared. */
const moves = {
  opening: 1,
  received: 1,
  found: 1,
  drawn: -1,
  destroyed: -1,
  broken: -1,
  'sent-back': -1,
  lost: -1,
  counted: 0,
} as const satisfies Record<Body['what'], 1 | 0 | -1>
const witnessed: ReadonlySet<Body['what']> = new Set(['opening', 'counted', 'destroyed', 'broken', 'lost', 'found'])

/** The last count that differed, as long as what was missing or too much is not written down. */
type Open = { readonly left: Decimal; readonly finding: RegisterFinding } | null

/** The running balance, and what each line shows by itself. What stands side by side moves nothing until it is settled. */
export function balanced(
  entries: readonly Line<Body>[],
  draws: ReadonlyMap<string, Draw>,
  about: { readonly unit: RegisterUnit; readonly theFold: Case; readonly sideBySide: ReadonlySet<string> },
) {
  const { unit, theFold, sideBySide } = about
  const findings: RegisterFinding[] = []
  let balance = new Decimal(0)
  let open: Open = null
  const lines: RegisterLine[] = []
  for (const entry of entries) {
    const { body } = entry
    if (entry.state !== 'live' || body.amount.unit !== unit) {
      if (entry.state === 'live')
        findings.push(seen('confirm', 'other-unit', { unit: unitWord(unit) }, entry.header.id))
      lines.push({ entry, balance: null, draw: null })
      continue
    }
    if (!sideBySide.has(entry.header.id)) {
      balance = balance.plus(new Decimal(body.amount.value).times(moves[body.what]))
    }
    open = stillOpen(open, entry, balance)
    findings.push(...judgeLine(entry, balance, theFold))
    const draw = body.ampoule === null ? undefined : draws.get(ampouleKey(body.ampoule))
    lines.push({ entry, balance, draw: draw ?? null })
  }
  if (open) findings.push(open.finding)
  if (!lines.some(({ entry, balance: after }) => after && entry.body.what === 'opening')) {
    findings.push(seen('note', 'no-opening'))
  }
  return { lines, findings }
}

function stillOpen(open: Open, { body, header }: Line<Body>, balance: Decimal): Open {
  const amount = new Decimal(body.amount.value)
  if (body.what === 'counted') {
    const left = amount.minus(balance)
    const about = { counted: say(amount, body), balance: say(balance, body), left: say(left.abs(), body) }
    return left.isZero() ? null : { left, finding: seen('confirm', 'count-differs', about, header.id) }
  }
  if (!open || (body.what !== 'lost' && body.what !== 'found')) return open
  const left = open.left.minus(amount.times(moves[body.what]))
  return left.isZero() ? null : { ...open, left }
}

function judgeLine(line: Line<Body>, balance: Decimal, theFold: Case): RegisterFinding[] {
  const { body, header, orderCertain } = line
  const findings: RegisterFinding[] = []
  const { id } = header
  if (balance.isNegative()) findings.push(seen('confirm', 'below-nothing', { balance: say(balance, body) }, id))
  if (body.what === 'drawn' && body.ampoule === null) findings.push(seen('confirm', 'ampoule-missing', {}, id))
  if (witnessed.has(body.what) && isUnwitnessed(line, theFold)) findings.push(seen('note', 'witness-missing', {}, id))
  if (!orderCertain) findings.push(seen('note', 'order-uncertain', {}, id))
  return findings
}

function say(value: Decimal, { amount }: Body): string {
  return `${plain(value)} ${unitWord(amount.unit)}`
}
