import type { DoseRow, Drug } from '#core/formulary/drug.ts'
import { type AnyQuantity, convert, type Quantity } from '#core/units/quantity.ts'
import { type DoseFinding, found } from './findings.ts'
import type { DosingRules } from './rules.ts'

/**
 * A patch is one of its sizes or it is nothing: it is never cut. Another size than the usual one at this weight asks
 * for a person (Merck opioid table).
 *
 * @example judgePatch(fentanyl, row, quantity('15', 'ug/h'), quantity('3', 'kg'), rules)[0]?.code // 'patch-not-a-size'
 */
export function judgePatch(
  drug: Drug,
  row: DoseRow,
  amount: AnyQuantity,
  weight: Quantity<'kg'>,
  { patches }: Pick<DosingRules, 'patches'>,
): DoseFinding[] {
  const rate = convert(amount, 'ug/h')
  if (row.use !== 'transdermal' || !rate) return []
  const usual = patches.find(({ value: { toKg, included } }) => {
    if (toKg === null) return true
    return included ? weight.value.lte(toKg) : weight.value.lt(toKg)
  })
  const most = row.maxSingle && convert(row.maxSingle.value.limit, 'ug/h')
  const sizes = patches.filter(({ value }) => !most || most.value.gte(value.size))
  const size = usual && sizes.includes(usual) ? usual : sizes.at(-1)
  if (!size || rate.value.eq(size.value.size)) return []
  const about = {
    drug: drug.name,
    amount: amount.toString(),
    weight: weight.toString(),
    usual: `${size.value.size} ug/h`,
    sizes: `${sizes.map(({ value }) => value.size).join(', ')} ug/h`,
  }
  const exists = sizes.some(({ value }) => rate.value.eq(value.size))
  return [found(exists ? 'confirm' : 'block', exists ? 'patch-not-usual' : 'patch-not-a-size', about, [size])]
}
