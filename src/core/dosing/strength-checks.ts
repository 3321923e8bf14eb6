import type { Drug } from '#core/formulary/drug.ts'
import type { Route } from '#core/formulary/words.ts'
import { convert } from '#core/units/quantity.ts'
import type { Drawing } from './drawing.ts'
import { type DoseFinding, found } from './findings.ts'
import type { PlannedLine } from './request.ts'
import type { DosingRules } from './rules.ts'
import { productOf } from './strength-in-hand.ts'

/**
 * Strengths in the plan that are taken for each other: said once for the plan, not on every line, because the bottle is
 * right more often than not.
 *
 * @example judgeConfused([{ drug: ketamine, line: { stock: quantity('100', 'mg/mL'), … } }], rules)[0]?.about.others // '50 mg/mL'
 */
export function judgeConfused(
  lines: readonly { readonly drug: Drug; readonly line: PlannedLine }[],
  { confusedStrengths }: Pick<DosingRules, 'confusedStrengths'>,
): DoseFinding[] {
  return lines.flatMap(({ drug, line }) => {
    const stock = productOf(line)
    const inHand = stock && convert(stock, 'mg/mL')?.value
    const trap = confusedStrengths.find((entry) => entry.drug === drug.id)
    if (!stock || !inHand || !trap?.strengths.some((strength) => inHand.eq(strength))) return []
    const others = trap.strengths.filter((strength) => !inHand.eq(strength)).map((strength) => `${strength} mg/mL`)
    const beside = [...others, ...(trap.beside ? [trap.beside] : [])].join(', ')
    return [
      found('note', 'strength-easily-confused', { drug: drug.name, stock: stock.toString(), others: beside }, [trap]),
    ]
  })
}

const injected: ReadonlySet<Route> = new Set(['IV', 'IM', 'SC', 'IO', 'perineural', 'infiltration'])

/** A bottle made for the mouth goes into no needle; one made for injection is no matter by mouth. */
export function strengthForOtherRoute({ drug, row, line }: Drawing): DoseFinding[] {
  const stock = productOf(line)
  const inHand = stock && convert(stock, 'mg/mL')?.value
  const routes = line.route ? [line.route] : row.routes
  if (!stock || !inHand || !routes.every((route) => injected.has(route))) return []
  const same = row.stocks.value.filter(({ strength }) => strength && convert(strength, 'mg/mL')?.value.eq(inHand))
  if (same.length === 0 || same.some(({ words }) => words !== 'by mouth')) return []
  const fit = row.stocks.value.filter(({ words, strength }) => strength && words !== 'by mouth')
  const about = {
    drug: drug.name,
    stock: stock.toString(),
    madeFor: 'by mouth',
    route: routes.join(' or '),
    known: fit.map(({ strength }) => strength?.toString() ?? '').join(', ') || 'an injection',
  }
  return [found('block', 'strength-for-other-route', about, [row.stocks])]
}

/** A liquid by mouth for a dog, of a drug whose liquids may hold xylitol, until somebody has read the label. */
export function strengthWithXylitol({ drug, row, line, rules }: Drawing): DoseFinding[] {
  const isByMouth = (line.route ?? row.routes[0]) === 'PO'
  if (row.species !== 'dog' || !line.stock || !isByMouth || !rules.xylitol.value.includes(drug.id)) return []
  if (line.xylitolFree === true) return []
  const level = line.xylitolFree === false ? 'block' : 'confirm'
  return [found(level, 'xylitol-in-liquid', { drug: drug.name }, [rules.xylitol])]
}
