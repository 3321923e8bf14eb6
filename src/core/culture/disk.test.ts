import { expect, it } from 'vitest'
import { sameDisk } from './disk.ts'

it('takes the load of a disk as printed in any way, and no other load for it', () => {
  for (const [one, other] of [
    ['30 µg', '30 ug'],
    ['30 µg', '30mcg'],
    ['30 µg', '30'],
    ['20/10 µg', '30 µg'],
    ['1.25/23.75 µg', '25'],
    ['10 units', '10 IU'],
  ] as const) {
    expect(sameDisk(one, other), `${one} ${other}`).toBe(true)
  }
  for (const [one, other] of [
    ['30 µg', '10 µg'],
    ['10 units', '10 µg'],
    ['30 µg', 'disk'],
    ['', ''],
    ['20/10 µg', '10/20 µg'],
  ] as const) {
    expect(sameDisk(one, other), `${one} ${other}`).toBe(false)
  }
})
