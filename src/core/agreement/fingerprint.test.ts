import { describe, expect, it } from 'vitest'
import { canonical, hashText, type Json } from '#core/journal/canonical.ts'
import { upcast } from '#core/journal/kind.ts'
import { agreement } from '#core/journal/kinds/agreement.ts'
import { type AgreedPlan, fingerprintOf, isBound } from './fingerprint.ts'

const plan: AgreedPlan = {
  ears: [{ side: 'LEFT', procedure: 'teca-lbo' }],
  surgeon: 'person-1',
  ceiling: { amount: '3600.00', currency: 'GBP' },
  leaflet: 'owner-leaflet 1',
  language: 'en',
  mayExtend: 'phone-first',
  extension: null,
  numbers: [],
}

const number = {
  procedure: 'teca-lbo',
  outcome: 'horner_any',
  unit: 'animal',
  low: 2,
  middle: 4,
  high: 8,
  said: 'Of 100 dogs about 4.',
} as const

describe('the fingerprint of an agreed plan', () => {
  it('is the same for the same plan, whatever the order of its fields', () => {
    const turned = Object.fromEntries(Object.entries(plan).reverse()) as AgreedPlan
    expect(fingerprintOf(turned)).toBe(fingerprintOf(plan))
  })

  it('breaks when side, procedure, extension, surgeon, ceiling, leaflet, language or a number changes', () => {
    const changed: AgreedPlan[] = [
      { ...plan, ears: [{ side: 'RIGHT', procedure: 'teca-lbo' }] },
      { ...plan, ears: [{ side: 'LEFT', procedure: 'ventral-bulla-osteotomy' }] },
      { ...plan, ears: [...plan.ears, { side: 'RIGHT', procedure: 'teca-lbo' }] },
      { ...plan, surgeon: 'person-2' },
      { ...plan, ceiling: { amount: '3600.01', currency: 'GBP' } },
      { ...plan, leaflet: 'owner-leaflet 2' },
      { ...plan, language: 'pt' },
      { ...plan, mayExtend: 'yes' },
      { ...plan, extension: 'The bulla may be opened from below.' },
      { ...plan, numbers: [number] },
      { ...plan, numbers: [{ ...number, high: 9 }] },
    ]
    expect(new Set([plan, ...changed].map(fingerprintOf)).size).toBe(changed.length + 1)
  })

  it('of version 1 stays valid under its own mark, and only for what that mark covers', () => {
    const { ears, surgeon, ceiling, leaflet, language } = plan
    const first = { ears, surgeon, ceiling, leaflet, language }
    const fingerprint = hashText(canonical(first as unknown as Json))
    const older = {
      plan: first,
      fingerprint,
      estimate: { low: plan.ceiling, high: plan.ceiling },
      consentBy: 'contact-1',
      authority: 'owner',
      resuscitate: 'yes',
      mayExtend: 'no',
      photographs: 'no',
      teachBack: [{ item: 'collar', answer: 'own-words' }],
      explainedBy: 'person-1',
    }
    const read = agreement.body.parse(upcast(agreement, 1, older as unknown as Json))
    expect(read).toMatchObject({ plan: { ...first, mayExtend: 'no', numbers: [] }, given: 'not-recorded' })
    expect(isBound(read)).toBe(true)
    expect(isBound({ ...read, plan: { ...read.plan, surgeon: 'person-2' } })).toBe(false)
    expect(isBound({ ...read, plan: { ...read.plan, numbers: [number] } })).toBe(false)
    expect(isBound({ ...read, plan: { ...read.plan, extension: 'More.' } })).toBe(false)
  })
})
