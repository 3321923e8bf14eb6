import { describe, expect, it } from 'vitest'
import { highestRung, lowestRung, onLadder, rungName, rungsOf } from './ladder.ts'

describe('the ladder of dilutions', () => {
  it('takes the names of one dilution as one', () => {
    for (const [names, rung] of [
      [['0.12', '0.125', '0.13'], -3],
      [['0.06', '0.0625', '0.064'], -4],
      [['0.03', '0.031', '0.032'], -5],
      [['0.015', '0.016'], -6],
      [['1', '1.0', '1.00'], 0],
    ] as const) {
      expect(names.map((name) => onLadder(name))).toEqual(names.map(() => ({ rung, exact: true })))
    }
  })

  it('takes a value between two dilutions upwards, as the instructions of gradient strips say', () => {
    for (const [strip, upper] of [
      ['0.38', '0.5'],
      ['0.75', '1'],
      ['1.5', '2'],
      ['0.047', '0.06'],
      ['0.094', '0.12'],
      ['3', '4'],
    ] as const) {
      expect(onLadder(strip)).toEqual({ rung: onLadder(upper)?.rung, exact: false })
    }
  })

  it('knows nothing below zero or above its top', () => {
    for (const text of ['0', '-1', 'x', '100000']) expect(onLadder(text)).toBeNull()
  })

  it('names every dilution so that it is found again', () => {
    for (let rung = -10; rung < highestRung; rung += 1) expect(onLadder(rungName(rung))).toEqual({ rung, exact: true })
  })

  it('turns a sign into everything that the value can be', () => {
    expect(rungsOf('<=', '0.5')).toEqual({ from: lowestRung, to: -1 })
    expect(rungsOf('<', '0.5')).toEqual({ from: lowestRung, to: -2 })
    expect(rungsOf('>', '0.5')).toEqual({ from: 0, to: highestRung })
    expect(rungsOf('>=', '0.5')).toEqual({ from: -1, to: highestRung })
    expect(rungsOf('=', '0.5')).toEqual({ from: -1, to: -1 })
  })

  it('leaves the upper dilution possible of a value between two, whatever the sign', () => {
    expect(rungsOf('<', '0.38')?.to).toBe(-1)
    expect(rungsOf('>', '0.38')?.from).toBe(-1)
  })
})
