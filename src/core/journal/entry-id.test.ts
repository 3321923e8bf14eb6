import { describe, expect, it } from 'vitest'
import { entryIdSchema } from './entry.ts'
import { entryId } from './entry-id.ts'

describe('an entry id', () => {
  it('is the example of RFC 9562, appendix A.6, for its time and chance', () => {
    // rand_a 0xCC3, rand_b 0x18C4DC0C0C07398F; the version and variant bits are set over whatever stands there.
    const chance = new Uint8Array([0xfc, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f])
    expect(entryId(0x017f22e279b0, chance)).toBe('017f22e2-79b0-7cc3-98c4-dc0c0c07398f')
  })

  it('is accepted by the journal whatever the chance', () => {
    for (let byte = 0; byte < 256; byte += 1) {
      expect(entryIdSchema.safeParse(entryId(1_700_000_000_000, new Uint8Array(10).fill(byte))).success).toBe(true)
    }
  })

  it('is refused without a time it can hold or with too little chance', () => {
    expect(() => entryId(-1, new Uint8Array(10))).toThrow('time')
    expect(() => entryId(0, new Uint8Array(9))).toThrow('10 random bytes')
  })
})
