import type { z } from 'zod'
import { canonical, hashText, type Json } from '#core/journal/canonical.ts'
import type { planSchema } from '#core/journal/kinds/agreement.ts'

export type AgreedPlan = z.infer<typeof planSchema>

/**
 * The fingerprint that binds consent to a plan: side, procedure, surgeon, ceiling, leaflet and language.
 * Change any of them and the fingerprint differs, so consent is asked again.
 *
 * @example fingerprintOf(plan) === agreement.fingerprint
 */
export function fingerprintOf(plan: AgreedPlan): string {
  return hashText(canonical(plan as unknown as Json))
}
