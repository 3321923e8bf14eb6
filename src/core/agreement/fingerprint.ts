import type { z } from 'zod'
import { canonical, hashText, type Json } from '#core/journal/canonical.ts'
import type { planSchema } from '#core/journal/kinds/agreement.ts'

export type AgreedPlan = z.infer<typeof planSchema>

/**
 * The fingerprint that binds consent to a plan: side, procedure, extension, surgeon, ceiling, leaflet, language and the
 * numbers shown that day. Change any of them and the fingerprint differs, so consent is asked again.
 *
 * @example fingerprintOf(plan) === agreement.fingerprint
 */
export function fingerprintOf(plan: AgreedPlan): string {
  return hashText(canonical(plan as unknown as Json))
}

/** As version 1 of an agreement bound it: side, procedure, surgeon, ceiling, leaflet and language alone. */
export function firstFingerprintOf({ ears, surgeon, ceiling, leaflet, language }: AgreedPlan): string {
  return hashText(canonical({ ears, surgeon, ceiling, leaflet, language } as unknown as Json))
}

/**
 * Whether the mark on file is that of the plan. An agreement of version 1 stays valid under its own mark, as long as
 * nothing was added to its plan that the mark does not cover.
 *
 * @example isBound(agreement.body) // false after anybody changed the plan under it
 */
export function isBound({ plan, fingerprint }: { readonly plan: AgreedPlan; readonly fingerprint: string }): boolean {
  if (fingerprint === fingerprintOf(plan)) return true
  const first = plan.numbers.length === 0 && plan.extension === null
  return first && fingerprint === firstFingerprintOf(plan)
}
