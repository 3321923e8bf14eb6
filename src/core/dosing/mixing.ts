import type { Provenance } from '#core/evidence/sourced.ts'
import type { Carrier } from '#core/formulary/carriers.ts'
import type { Drug } from '#core/formulary/drug.ts'
import type { Group } from '#core/formulary/words.ts'
import { type DoseFinding, found } from './findings.ts'

/** A drug by its id, or every drug of a group. */
type Which = { readonly drug: string } | { readonly group: Group }

/** What is known of drugs in one bag, syringe or line. */
export type MixingRules = {
  /** Shares its syringe with nothing, or only with what is named; `diluted: false` is never diluted either. */
  readonly alone: readonly (Provenance & {
    readonly which: Which
    readonly except: readonly string[]
    readonly diluted: boolean
    readonly because: string
  })[]
  readonly apart: readonly (Provenance & { readonly between: readonly [Which, Which]; readonly because: string })[]
  /** The fluids a drug may run in; every other is refused. */
  readonly carriers: readonly (Provenance & {
    readonly which: Which
    readonly only: readonly Carrier[]
    readonly because: string
  })[]
  /** Drugs that have been mixed in print: any two of one list may share a bag. */
  readonly together: readonly (Provenance & { readonly which: readonly Which[] })[]
}

/**
 * What a drug meets in its bag or syringe: drugs it must not share with (a block), the wrong fluid (a block), and
 * drugs of which no source here says that they mix (a confirmation).
 *
 * @example judgeMixture(diazepam, [ketamine], undefined, rules)[0].code // 'mixture-alone'
 */
export function judgeMixture(
  mine: Drug,
  others: readonly Drug[],
  carrier: Carrier | undefined,
  rules: MixingRules,
): DoseFinding[] {
  return [...others.flatMap((other) => meeting(mine, other, rules)), ...inFluid(mine, carrier, rules)]
}

/** Whether the product may be made weaker for drawing; the reason when it may not. */
export function dilutionBar(
  drug: Drug,
  { alone }: Pick<MixingRules, 'alone'>,
): MixingRules['alone'][number] | undefined {
  return alone.find((rule) => isOf(drug, rule.which) && !rule.diluted)
}

function meeting(mine: Drug, other: Drug, { alone, apart, together }: MixingRules): DoseFinding[] {
  if (mine.id === other.id) return []
  const about = { drug: mine.name, other: other.name }
  const lonely = alone.find(
    ({ which, except }) =>
      (isOf(mine, which) && !except.includes(other.id)) || (isOf(other, which) && !except.includes(mine.id)),
  )
  if (lonely) return [found('block', 'mixture-alone', { ...about, because: lonely.because }, [lonely])]
  const barred = apart.find(
    ({ between: [one, two] }) => (isOf(mine, one) && isOf(other, two)) || (isOf(mine, two) && isOf(other, one)),
  )
  if (barred) return [found('block', 'mixture-forbidden', { ...about, because: barred.because }, [barred])]
  const known = together.some(
    ({ which }) => which.some((one) => isOf(mine, one)) && which.some((one) => isOf(other, one)),
  )
  return known ? [] : [found('confirm', 'mixture-unknown', about)]
}

function inFluid(mine: Drug, carrier: Carrier | undefined, { carriers }: MixingRules): DoseFinding[] {
  if (!carrier) return []
  return carriers
    .filter(({ which, only }) => isOf(mine, which) && !only.includes(carrier))
    .map((rule) => {
      const about = { drug: mine.name, carrier, only: rule.only.join(', '), because: rule.because }
      return found('block', 'carrier-forbidden', about, [rule])
    })
}

function isOf(drug: Drug, which: Which): boolean {
  return 'drug' in which ? drug.id === which.drug : drug.groups.includes(which.group)
}
