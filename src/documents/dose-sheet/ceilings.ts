import { doseSheetWords as words } from '#content/wording/papers-dose.ts'
import type { DoseResult } from '#core/dosing/dose-lines.ts'
import { fill } from '#core/outcome/finding.ts'
import { type Decimal, plain } from '#core/units/quantity.ts'
import { drugName } from '../case/drug-name.ts'
import { sayQuantity } from '../case/say-quantity.ts'
import { type Block, list, paragraph, strong } from '../render/model.ts'

/** The one limit that belongs to the animal, with each site and drug as its share. */
export function ceilingBlocks(doses: DoseResult | null): Block[] {
  if (!doses || doses.ceilings.length === 0) return [paragraph(words.noCeiling)]
  return doses.ceilings.flatMap(({ used, granted, limit, infusion, parts }) => [
    paragraph([strong(fill(words.ceiling, { granted: share(granted), limit: share(limit) }))]),
    ...(used.eq(granted) ? [] : [paragraph(fill(words.ceilingAsked, { used: share(used) }))]),
    ...(infusion.isZero() ? [] : [paragraph(fill(words.ceilingInfusion, { infusion: share(infusion) }))]),
    list(
      parts.map(({ kind, drug, mass, limit: most, fraction, counted }) =>
        fill(counted ? words.ceilingPart : words.ceilingPartOut, {
          drug: drugName(drug),
          kind: words.ceilingKinds[kind],
          amount: sayQuantity(mass),
          limit: sayQuantity(most),
          share: share(fraction),
        }),
      ),
    ),
  ])
}

/** Rounded up in the last place: a share of a limit never looks smaller than it is. */
function share(value: Decimal): string {
  return plain(value.toDecimalPlaces(3, 2))
}
