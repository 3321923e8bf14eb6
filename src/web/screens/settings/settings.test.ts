import { describe, expect, it } from 'vitest'
import type { RegisterRow } from '#actions/store.ts'
import { doseDefaults } from '#core/dosing/own-defaults.ts'
import { owedPolicies } from '#core/owed/policies.ts'
import { sayContent } from '#documents/sources/say-content.ts'
import { ownValue } from './own-spans.ts'
import { policyName } from './policy-name.ts'
import { standing } from './standing.ts'

const row = (id: string, revision: number, body: RegisterRow['body']): RegisterRow => ({
  register: 'closed-day',
  id,
  revision,
  body,
  by: 'person-holm',
  at: '2026-11-25T09:00:00.000Z',
})

describe('rows of a register', () => {
  it('stand as they were last written, without those that were taken away', () => {
    const rows = [
      row('2026-12-25', 1, { day: '2026-12-25', because: 'Christmas' }),
      row('2026-12-25', 2, { day: '2026-12-25', because: 'Christmas Day' }),
      row('2026-12-26', 2, null),
      row('2026-12-26', 1, { day: '2026-12-26', because: 'Boxing Day' }),
    ]
    expect(standing(rows, 'closed-day')).toEqual([
      { id: '2026-12-25', body: { day: '2026-12-25', because: 'Christmas Day' } },
    ])
    expect(standing(rows, 'price')).toEqual([])
  })
})

describe('house policies', () => {
  it('have a name for people, and beside them the value of the tool wherever a source gives one', () => {
    for (const policy of owedPolicies) expect(policyName(policy)).not.toBe(policy)
    const without = owedPolicies.filter((policy) => ownValue(policy) === undefined)
    expect(without).toEqual(['owed.admission-before'])
    expect(sayContent(ownValue('owed.suture-check')?.value)).toBe('10 to 14 days')
    expect(sayContent(ownValue('owed.face.then-every')?.value)).toBe('1 month')
    expect(String(ownValue('dose.surface-factor.dog')?.value)).toBe('0.101')
    expect(sayContent(ownValue('dose.syringes')?.value)).toContain('3 by 0.1')
    expect(doseDefaults.every((policy) => ownValue(policy) !== undefined)).toBe(true)
    expect(policyName('something-of-ours')).toBe('something-of-ours')
  })
})
