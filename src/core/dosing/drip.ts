import { convert, plain, type Quantity } from '#core/units/quantity.ts'
import type { Drawing, Drawn } from './drawing.ts'
import { type Drip, type Drops, dropsOf } from './drops.ts'
import { type DoseFinding, found } from './findings.ts'
import { mostOf } from './limits.ts'
import type { Measured } from './request.ts'

/** What was drawn, with its drops where somebody told the number of the set. That number is never guessed. */
export function withDrip(drawing: Drawing, drawn: Drawn): Drawn {
  const { set } = drawing.line
  if (!set) return drawn
  const { rate } = drawn.measured
  const findings = [...unusual(drawing, set), ...ofDrug(drawing)]
  const about = { drug: drawing.drug.name }
  if (!rate) {
    const missing = found('note', 'drip-without-time', about, [drawing.rules.drip.formula])
    return { ...drawn, findings: [...drawn.findings, ...findings, missing] }
  }
  const drip = dripOf(drawing, drawn.measured, rate, set)
  return {
    measured: { ...drawn.measured, drip },
    findings: [...drawn.findings, ...findings, ...uneven(drawing, rate, drip)],
  }
}

function dripOf(
  { row, dose, amount }: Drawing,
  { fluid }: Partial<Measured>,
  rate: Quantity<'mL/h'>,
  set: Quantity<'[drp]/mL'>,
): Drip {
  // How fast a bolus runs in changes nothing of its amount; a rate is the amount itself.
  const limit = convert(amount, 'mL/h') && mostOf(row, dose, amount)
  const most = limit && convert(limit, 'mL/h')
  const drops = (of: Quantity<'mL/h'>): Drops => {
    const { count, gives } = dropsOf(of, set, most)
    return { count, gives }
  }
  const together = fluid?.deficit?.together
  return {
    set,
    ...dropsOf(rate, set, most),
    hours: fluid?.hours.map(({ hour, rate: ofHour }) => ({ hour, ...drops(ofHour) })) ?? [],
    ...(together && { together: drops(together) }),
  }
}

function unusual({ rules }: Drawing, set: Quantity<'[drp]/mL'>): DoseFinding[] {
  const { sets } = rules.drip
  if (sets.value.some((one) => set.value.eq(one))) return []
  return [found('confirm', 'drip-set-unusual', { set: plain(set.value), known: sets.value.join(', ') }, [sets])]
}

/** A drug is measured by its rate, and gravity keeps none. */
function ofDrug({ drug, row, rules }: Drawing): DoseFinding[] {
  const { uses } = rules.drip
  if (uses.value.includes(row.use)) return []
  return [found('confirm', 'drip-for-drug', { drug: drug.name }, [uses])]
}

/** One drop more or less is much when only a few fall. */
function uneven({ drug, rules }: Drawing, rate: Quantity<'mL/h'>, { set, gives }: Drip): DoseFinding[] {
  const share = gives.value.div(rate.value).minus(1).abs()
  if (share.lte(rules.rounding.value.confirm)) return []
  const short = (one: Quantity<'mL/h'>) => `${plain(one.value.toSignificantDigits(3))} mL/h`
  const about = { drug: drug.name, set: plain(set.value), rate: short(rate), gives: short(gives) }
  return [found('confirm', 'drip-uneven', about, [rules.rounding])]
}
