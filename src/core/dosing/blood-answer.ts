import type { Provenance } from '#core/evidence/sourced.ts'
import { type AllowableLoss, allowableLoss, type BloodVolume, bloodVolume } from '#core/theatre/blood-volume.ts'
import type { Quantity } from '#core/units/quantity.ts'
import type { DosedAnimal, Haematocrit } from './request.ts'
import type { DosingRules } from './rules.ts'
import { leanWeight } from './weight.ts'

export type BloodAnswer = {
  readonly volume: BloodVolume
  readonly weight: Quantity<'kg'>
  /** Both formulas in use, each by its divisor; the one by the mean gives the larger loss. */
  readonly allowable: readonly AllowableLoss[]
  readonly sources: readonly Provenance[]
}

/**
 * The animal's blood, on lean weight, and what it may lose until the haematocrit is at the lowest value a person
 * bears; undefined without a weight or with a lowest value that is not below the start.
 *
 * @example bloodOf(dogOf20Kg, { start: 40 %, lowest: 25 % }, rules)?.allowable[0].volume // 675 mL, by the start
 */
export function bloodOf(
  animal: DosedAnimal,
  haematocrit: Haematocrit | undefined,
  rules: Pick<DosingRules, 'weight' | 'transfusion'>,
): BloodAnswer | undefined {
  if (!animal.weight) return undefined
  const weight = leanWeight(animal.weight, animal.bodyCondition, rules.weight)
  const perKg = rules.transfusion.bloodPerKg[animal.species]
  const volume = bloodVolume(weight, perKg)
  const both = haematocrit ? (['start', 'mean'] as const) : []
  const allowable = both.flatMap((dividedBy) => {
    const [start, lowest] = [haematocrit?.start.value, haematocrit?.lowest.value]
    if (!start || !lowest) return []
    const loss = allowableLoss(volume.counted, { start, lowest, dividedBy })
    return loss.kind === 'answer' ? [loss.answer] : []
  })
  return { volume, weight, allowable, sources: [perKg] }
}
