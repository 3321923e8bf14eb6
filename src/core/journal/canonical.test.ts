import { describe, expect, it } from 'vitest'
import { canonical, hashBytes, hashText } from './canonical.ts'

describe('canonical text', () => {
  it('sorts keys by UTF-16 code units, as in the example of RFC 8785 section 3.2.3', () => {
    // The RFC's seventh key (U+FB33) is left out: it is not in NFC, which this journal also asks for.
    const keys = { '\u20ac': 1, '\r': 2, '1': 3, '\u{1f600}': 4, '\u0080': 5, '\u00f6': 6 }
    expect(canonical(keys)).toBe('{"\\r":2,"1":3,"\u0080":5,"\u00f6":6,"\u20ac":1,"\u{1f600}":4}')
  })

  it('escapes strings as RFC 8785 section 3.2.2.2 asks: short escapes, lower-case hex, nothing more', () => {
    expect(canonical('\u20ac$\u000f\u000aA\'B"\\\\"/')).toBe('"\u20ac$\\u000f\\nA\'B\\"\\\\\\\\\\"/"')
  })

  it('writes the same letter typed in two ways as the same bytes (Unicode NFC)', () => {
    expect(canonical('Zo\u0065\u0308')).toBe(canonical('Zo\u00eb'))
    expect(canonical({ '\u0065\u0301': 1, f: 2 })).toBe(canonical({ f: 2, '\u00e9': 1 }))
  })

  it('refuses a fraction, a key that stands twice after normalising, half a character and things that are not JSON', () => {
    expect(() => canonical(0.1)).toThrow('write decimals as text')
    expect(() => canonical(2 ** 53)).toThrow('not a whole number')
    expect(() => canonical({ '\u00e9': 1, '\u0065\u0301': 2 })).toThrow('stands twice')
    expect(() => canonical('\ud83d')).toThrow('lone surrogate')
    expect(() => canonical(undefined as never)).toThrow('undefined')
  })

  it('is hashed with SHA-256 (the "abc" example of FIPS 180-4)', () => {
    const abc = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'
    expect(hashText('abc')).toBe(abc)
    expect(hashBytes(new Uint8Array([97, 98, 99]))).toBe(abc)
  })
})
