import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'
import { Decimal, isQuantity } from '#core/units/quantity.ts'

const content = fileURLToPath(new URL('../../src/content', import.meta.url))
const files = readdirSync(content, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts') && !path.endsWith('.test.ts'))
  .sort()

/** Where in a value something stands that is not data, `a.b.2: function`. */
function notData(value: unknown, path: string): string[] {
  if (isQuantity(value) || Decimal.isDecimal(value)) return []
  if (value === null || ['string', 'boolean', 'undefined'].includes(typeof value)) return []
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path}: ${value}`]
  if (typeof value !== 'object') return [`${path}: ${typeof value}`]
  const prototype = Object.getPrototypeOf(value)
  const plain = [Object.prototype, Array.prototype, null].includes(prototype)
  if (!plain) return [`${path}: ${prototype.constructor.name}`]
  return Object.entries(value).flatMap(([key, member]) => notData(member, `${path}.${key}`))
}

describe('content', () => {
  it('holds nothing but data, so that it can be printed, compared and exported', async () => {
    const found: string[] = []
    for (const path of files) {
      const exported: Record<string, unknown> = await import(/* @vite-ignore */ join(content, path))
      found.push(...Object.entries(exported).flatMap(([name, value]) => notData(value, `${path} ${name}`)))
    }
    expect(found).toEqual([])
    expect(files.length).toBeGreaterThan(150)
  })

  it('would be caught with a function, a clock or a not-a-number in it', () => {
    expect(notData({ rows: [{ ask: () => 1 }] }, 'x')).toEqual(['x.rows.0.ask: function'])
    expect(notData({ on: new Date(0) }, 'x')).toEqual(['x.on: Date'])
    expect(notData({ dose: Number.NaN }, 'x')).toEqual(['x.dose: NaN'])
  })
})
