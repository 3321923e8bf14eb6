import { describe, expect, it } from 'vitest'
import { caseFileOf } from '#core/journal/case-file.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import { moss } from '#demo/cat.ts'
import { demoClinic, practiceChart, registerRows } from '#demo/practice.ts'
import { tansy } from '#demo/spaniel.ts'
import { knowledgeOf } from '#documents/case/knowledge-of.ts'
import { planAsWritten } from './plan-as-written.ts'

function fileOf({ entries, stream }: ReturnType<typeof tansy>): CaseFile {
  const whole = { clinic: demoClinic, rows: registerRows(), entries: [...practiceChart().entries, ...entries] }
  const file = caseFileOf(whole, stream)
  if (!file) throw new Error('The practice has no clinic line.')
  return file
}

describe('planned lines judged again from the journal', () => {
  it.each([
    ['the spaniel', tansy, 'operation-tansy-left'],
    ['the cat', moss, 'operation-moss-right'],
  ])('give %s the same amounts as when they were written', (_, chart, operation) => {
    const file = fileOf(chart())
    const result = planAsWritten(file, operation, knowledgeOf(file))
    const written = file.theCase.live('planned-line').map(({ body }) => [body.line, body.amount, body.drawn])
    const again = result?.lines.map((line) =>
      line.verdict === 'refused' ? [line.id, 'refused'] : [line.id, line.amount.toJSON(), line.drawn?.toJSON() ?? null],
    )
    expect(new Map(again?.map(([id, ...rest]) => [id, rest]))).toEqual(
      new Map(written.map(([id, ...rest]) => [id, rest])),
    )
  })

  it('are none for an operation nobody planned', () => {
    const file = fileOf(tansy())
    expect(planAsWritten(file, 'operation-unknown', knowledgeOf(file))).toBeNull()
  })
})
