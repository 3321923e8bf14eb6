import { describe, expect, it } from 'vitest'
import { fits } from './search.ts'

const row = { name: 'Zoë', chip: '000000000000042', ownerName: 'Rosalind Okafor', ownerPhone: '01632 960111' }

describe('finding a case', () => {
  it.each(['zoe', 'ZOË', 'okaf', 'zo rosal', '', '  ', '0042', '960 111', '(01632) 960', 'okafor 960'])(
    'fits “%s”',
    (text) => {
      expect(fits(row, text)).toBe(true)
    },
  )

  it.each(['zola', 'okafor bell', '961', '-', '000 43'])('does not fit “%s”', (text) => {
    expect(fits(row, text)).toBe(false)
  })

  it('finds nobody by a number when there is none on record', () => {
    expect(fits({ name: 'Zoë', chip: null, ownerName: null, ownerPhone: null }, '0')).toBe(false)
  })
})
