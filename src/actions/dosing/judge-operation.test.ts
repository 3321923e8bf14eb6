import { describe, expect, it } from 'vitest'
import { fold } from '#core/journal/fold.ts'
import { moss } from '#demo/cat.ts'
import { tansy } from '#demo/spaniel.ts'
import { judgeOperation } from './judge-operation.ts'

describe('planned lines judged again from the journal', () => {
  it.each([
    ['the spaniel', tansy, 'operation-tansy-left'],
    ['the cat', moss, 'operation-moss-right'],
  ])('give %s the same amounts as when they were written', (_, chart, operation) => {
    const theCase = fold(chart().entries)
    const result = judgeOperation({ theCase }, operation)
    const written = theCase.live('planned-line').map(({ body }) => [body.line, body.amount, body.drawn])
    const again = result?.lines.map((line) =>
      line.verdict === 'refused' ? [line.id, 'refused'] : [line.id, line.amount.toJSON(), line.drawn?.toJSON() ?? null],
    )
    expect(new Map(again?.map(([id, ...rest]) => [id, rest]))).toEqual(
      new Map(written.map(([id, ...rest]) => [id, rest])),
    )
  })

  it('are none for an operation nobody planned', () => {
    expect(judgeOperation({ theCase: fold(tansy().entries) }, 'operation-unknown')).toBeNull()
  })
})
