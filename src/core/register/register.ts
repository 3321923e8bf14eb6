import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { bySeverity } from '#core/outcome/finding.ts'
import { Decimal } from '#core/units/quantity.ts'
import { type RegisterUnit, registerUnit } from './as-register-unit.ts'
import { balanced, type RegisterLine } from './balance.ts'
import { ampouleKey, type Draw, drawsOf, judgeDraw } from './draws.ts'
import { type RegisterFinding, seen } from './register-findings.ts'
import { unwritten } from './unwritten.ts'

type Body = BodyOf<'register-line'>
export type RegisterOf = Pick<Body, 'drug' | 'strength' | 'form'>

/** The register of one drug, strength and form as its entries and the cases make it. */
export type Register = RegisterOf & {
  readonly stream: string
  /** Since when a product on the shelf is marked to be kept in it; null: none is, or not any more. */
  readonly markedAt: string | null
  readonly unit: RegisterUnit
  /** Every line in its order, also those that were replaced or taken back. */
  readonly lines: readonly RegisterLine[]
  readonly opening: Decimal
  readonly received: Decimal
  readonly drawn: Decimal
  /** Destroyed, broken, sent back or missing. */
  readonly gone: Decimal
  readonly found: Decimal
  readonly balance: Decimal
  readonly findings: readonly RegisterFinding[]
}

/** @example registerStream({ drug: 'methadone', strength: { value: '10', unit: 'mg/mL' }, form: 'injection' }) */
export function registerStream({ drug, strength, form }: RegisterOf): string {
  return `register:${drug}|${new Decimal(strength.value).toFixed()} ${strength.unit}|${form}`
}

export type Page = {
  readonly stream: string
  readonly of: RegisterOf
  readonly markedAt: string | null
  readonly entries: readonly Line<Body>[]
}

/**
 * The registers of a house: of every product it marks, and of every one that has a line. `theFold` folds the lines of
 * all registers together with what the cases gave and wasted; nothing is stored but the entries.
 *
 * @example registersOf(fold(entries), house)[0]?.balance.toFixed() // '9'
 */
export function registersOf(theFold: Case, house: Case): Register[] {
  const pages = new Map<string, Page>()
  const open = (of: RegisterOf, markedAt: string | null) => {
    const stream = registerStream(of)
    if (!pages.has(stream)) pages.set(stream, { stream, of, markedAt, entries: entriesIn(theFold, stream) })
  }
  for (const { body, at } of house.live('shelf-item')) {
    const { drug, strength, form, controlled } = body
    if (controlled === 'yes' && strength) open({ drug, strength, form }, at)
  }
  for (const { body } of theFold.lines.filter(isRegisterLine)) open(body, null)
  const all = [...pages.values()]
  return all.map((page) => registerOf(page, all, theFold)).sort((a, b) => (a.stream < b.stream ? -1 : 1))
}

function isRegisterLine(line: Line): line is Line<Body> {
  return line.header.kind === 'register-line' && line.known && line.body !== null
}

function entriesIn(theFold: Case, stream: string): Line<Body>[] {
  return theFold.lines.filter(isRegisterLine).filter(({ body }) => registerStream(body) === stream)
}

function registerOf(page: Page, all: readonly Page[], theFold: Case): Register {
  const { stream, of, markedAt, entries } = page
  const unit = registerUnit(of.strength)
  const live = entries.filter(({ state }) => state === 'live')
  const byAmpoule = drawsOf(
    live.filter(({ body }) => body.what === 'drawn'),
    theFold,
  )
  const draws = [...byAmpoule.values()]
  const sideBySide = drawnSideBySide(live, theFold)
  const { lines, findings } = balanced(entries, byAmpoule, { unit, theFold, sideBySide })
  const sum = (...acts: readonly Body['what'][]) =>
    live
      .filter(({ body, header }) => acts.includes(body.what) && body.amount.unit === unit && !sideBySide.has(header.id))
      .reduce((total, { body }) => total.plus(body.amount.value), new Decimal(0))
  const parts = {
    opening: sum('opening'),
    received: sum('received'),
    drawn: sum('drawn'),
    gone: sum('destroyed', 'broken', 'sent-back', 'lost'),
    found: sum('found'),
  }
  const balance = parts.opening.plus(parts.received).plus(parts.found).minus(parts.drawn).minus(parts.gone)
  const says = [
    ...(markedAt === null ? [seen('note', 'not-marked')] : []),
    ...findings,
    ...draws.flatMap((draw) => judgeDraw(draw, theFold)),
    ...elsewhere(page, draws, all),
    ...unwritten(of.drug, all, theFold),
    ...conflicts(live, draws, theFold),
  ]
  return { ...of, stream, markedAt, unit, lines, ...parts, balance, findings: bySeverity(says) }
}

/**
 * Draws of one ampoule that two devices wrote: which of them is true is for a person to say, and until then the balance
 * stands as it stood before them.
 */
function drawnSideBySide(live: readonly Line<Body>[], theFold: Case): ReadonlySet<string> {
  const between = new Set(theFold.conflicts.flatMap((conflict) => conflict.between))
  const drawn = live.filter(({ body, header }) => body.what === 'drawn' && between.has(header.id))
  return new Set(drawn.map(({ header }) => header.id))
}

/** A number that two strengths of one drug both drew: which of them was given is not known. */
function elsewhere(page: Page, draws: readonly Draw[], all: readonly Page[]): RegisterFinding[] {
  const others = all.filter(({ stream, of }) => stream !== page.stream && of.drug === page.of.drug)
  const keys = new Set(
    others
      .flatMap(({ entries }) => entries)
      .flatMap(({ state, body }) => (state === 'live' && body.ampoule !== null ? [ampouleKey(body.ampoule)] : [])),
  )
  return draws.flatMap(({ ampoule, drawn: [first] }) =>
    keys.has(ampouleKey(ampoule)) ? [seen('confirm', 'ampoule-elsewhere', { ampoule }, first?.header.id ?? null)] : [],
  )
}

/** Two lines that stand side by side, as when two devices drew from one ampoule while the network was away. */
function conflicts(live: readonly Line<Body>[], draws: readonly Draw[], theFold: Case): RegisterFinding[] {
  const wasted = draws.flatMap(({ wasted: lines, ampoule }) => lines.map(({ header }) => ({ id: header.id, ampoule })))
  return theFold.conflicts.flatMap(({ between }) => {
    const line = live.find(({ header }) => between.includes(header.id))
    if (line) return [seen('confirm', 'said-twice', { ampoule: line.body.ampoule ?? '–' }, line.header.id)]
    const waste = wasted.find(({ id }) => between.includes(id))
    return waste ? [seen('confirm', 'wasted-twice', { ampoule: waste.ampoule }, waste.id)] : []
  })
}
