import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { Decimal, plain } from '#core/units/quantity.ts'
import { unitWord } from '#core/units/unit-words.ts'
import { inRegisterUnit, registerUnit } from './as-register-unit.ts'
import { type RegisterFinding, seen } from './register-findings.ts'
import { isUnwitnessed } from './witness.ts'

type Drawn = Line<BodyOf<'register-line'>>

/** What became of one ampoule: drawn = given + wasted. */
export type Draw = {
  readonly ampoule: string
  readonly drawn: readonly Drawn[]
  readonly given: readonly Line<BodyOf<'drug-given'>>[]
  readonly wasted: readonly Line<BodyOf<'drug-wasted'>>[]
}

/** Spaces around a number and the size of its letters make no other ampoule. */
export function ampouleKey(ampoule: string): string {
  return ampoule.trim().toLowerCase()
}

/**
 * One draw for every ampoule number of a register, by its key, with what the cases say of that drug and number. Looked
 * up by the key: a register of some years has thousands.
 */
export function drawsOf(drawn: readonly Drawn[], theFold: Case): ReadonlyMap<string, Draw> {
  const byKey = groupedByAmpoule(drawn)
  const drug = drawn[0]?.body.drug
  const ofDrug = ({ body }: { readonly body: { readonly drug: string } }) => body.drug === drug
  const given = groupedByAmpoule(theFold.live('drug-given').filter(ofDrug))
  const wasted = groupedByAmpoule(theFold.live('drug-wasted').filter(ofDrug))
  return new Map(
    [...byKey].map(([key, lines]) => {
      const ampoule = lines[0]?.body.ampoule ?? key
      return [key, { ampoule, drawn: lines, given: given.get(key) ?? [], wasted: wasted.get(key) ?? [] }]
    }),
  )
}

function groupedByAmpoule<One extends { readonly body: { readonly ampoule: string | null } }>(
  lines: readonly One[],
): Map<string, One[]> {
  const groups = new Map<string, One[]>()
  for (const line of lines) {
    if (line.body.ampoule === null) continue
    const key = ampouleKey(line.body.ampoule)
    const group = groups.get(key)
    if (group) group.push(line)
    else groups.set(key, [line])
  }
  return groups
}

/**
 * Whether what was drawn is what was given and wasted, in what the register is counted in; and who witnessed the waste.
 *
 * @example judgeDraw(draw, theFold)[0]?.about.left // '0.45 mL'
 */
export function judgeDraw({ ampoule, drawn, given, wasted }: Draw, theFold: Case): RegisterFinding[] {
  const [first] = drawn
  if (!first) return []
  const { strength } = first.body
  const entry = first.header.id
  const sum = (lines: readonly { readonly body: Pick<BodyOf<'drug-given'>, 'amount'> }[]) =>
    lines.reduce((all, { body }) => all.plus(inRegisterUnit(body.amount, strength) ?? 0), new Decimal(0))
  const unread = [...drawn, ...given, ...wasted].filter(
    ({ body }) => inRegisterUnit(body.amount, strength) === undefined,
  )
  const alone = wasted
    .filter((line) => isUnwitnessed(line, theFold))
    .map(({ header }) => seen('note', 'witness-missing', {}, header.id))
  if (unread.length > 0) {
    const amounts = unread.map(({ body }) => `${body.amount.value} ${unitWord(body.amount.unit)}`).join(', ')
    return [seen('confirm', 'draw-not-added', { ampoule, amounts }, entry), ...alone]
  }
  const [out, gave, waste] = [sum(drawn), sum(given), sum(wasted)]
  // A mass that does not divide evenly is compared to the millionth: no syringe draws less.
  const left = out.minus(gave).minus(waste).toDecimalPlaces(6)
  if (left.isZero()) return alone
  const say = (value: Decimal) => `${plain(value.toDecimalPlaces(6))} ${unitWord(registerUnit(strength))}`
  const about = { ampoule, drawn: say(out), given: say(gave), wasted: say(waste), left: say(left.abs()) }
  return [seen('confirm', 'draw-differs', about, entry), ...alone]
}
