import { describe, expect, it } from 'vitest'
import { agreement } from '#core/journal/kinds/agreement.ts'
import { signatureSvg, strokeLine, strokeOfHand } from './signature.ts'

describe('a signature', () => {
  it('keeps the line of the hand in whole numbers inside its box', () => {
    expect(
      strokeOfHand([
        [10.4, 20],
        [250, 55],
        [500, 90.2],
      ]),
    ).toEqual([10, 20, 500, 90])
    expect(strokeOfHand([[-50, 3000]])).toEqual([0, 2000])
  })

  it('never holds more points than an entry keeps, however long the hand moved', () => {
    const wild = Array.from({ length: 20_000 }, (_, n) => [(n * 7919) % 6000, (n * 104_729) % 2000] as const)
    const signature = { strokes: [{ points: strokeOfHand(wild) }], name: null }
    expect(agreement.body.safeParse({ ...agreement.example, signature }).success).toBe(true)
  })

  it('draws a single touch as a dot', () => {
    expect(strokeLine([5, 6])).toBe('M 5 6 L 5 6')
  })

  it('is a drawing of its own, with the name as words that are no markup', () => {
    const svg = signatureSvg([{ points: [1, 2, 3, 4] }], 'A <b> & B')
    expect(svg).toContain('<title>A &lt;b&gt; &amp; B</title>')
    expect(svg).toContain('<path d="M 1 2 L 3 4"/>')
  })
})
