import { describe, expect, it } from 'vitest'
import { sheet } from './sheet.ts'

describe('a spreadsheet file (RFC 4180)', () => {
  it('ends lines with CRLF and doubles quotes', () => {
    expect(sheet(['a', 'b'], [['x, "y"', 'two\nlines']])).toBe('a,b\r\n"x, ""y""","two\nlines"\r\n')
  })

  it.each(['=1+1', '+44', '-2', '@x', '\tx', '\rx'])('never lets %j be run as a formula', (text) => {
    expect(sheet(['a'], [[text]])).toBe(`a\r\n"'${text}"\r\n`)
  })
})
