import { describe, expect, it } from 'vitest'
import { type AgreedPlan, fingerprintOf } from './fingerprint.ts'

const plan: AgreedPlan = {
  ears: [{ side: 'LEFT', procedure: 'teca-lbo' }],
  surgeon: 'person-1',
  ceiling: { amount: '3600.00', currency: 'GBP' },
  leaflet: 'owner-leaflet 1',
  language: 'en',
}

describe('the fingerprint of an agreed plan', () => {
  it('is the same for the same plan, whatever the order of its fields', () => {
    const turned = Object.fromEntries(Object.entries(plan).reverse()) as AgreedPlan
    expect(fingerprintOf(turned)).toBe(fingerprintOf(plan))
  })

  it('breaks when side, procedure, surgeon, ceiling, leaflet or language changes', () => {
    const changed: AgreedPlan[] = [
      { ...plan, ears: [{ side: 'RIGHT', procedure: 'teca-lbo' }] },
      { ...plan, ears: [{ side: 'LEFT', procedure: 'ventral-bulla-osteotomy' }] },
      { ...plan, ears: [...plan.ears, { side: 'RIGHT', procedure: 'teca-lbo' }] },
      { ...plan, surgeon: 'person-2' },
      { ...plan, ceiling: { amount: '3600.01', currency: 'GBP' } },
      { ...plan, leaflet: 'owner-leaflet 2' },
      { ...plan, language: 'pt' },
    ]
    expect(new Set([plan, ...changed].map(fingerprintOf)).size).toBe(changed.length + 1)
  })
})
