import { expect, it } from 'vitest'
import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { fold } from '#core/journal/fold.ts'
import { sayAmount } from '#core/why/why.ts'
import { lossSoFar } from './loss-so-far.ts'

const subject = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
const mL = (value: string) => ({ value, unit: 'mL' }) as const

it('Losses of one operation are one span; what cannot be right is counted apart and never in the sum', () => {
  const make = entryMaker()
  const loss = (jar: string, lavageIn: string, lavageInJar: string | null) =>
    make({
      kind: 'blood-loss',
      subject,
      body: {
        jar: mL(jar),
        lavageIn: mL(lavageIn),
        lavageInJar: lavageInJar === null ? null : mL(lavageInJar),
        swabs: [],
      },
    })
  const theCase = fold([
    make({ kind: 'identity' }),
    loss('20', '0', null),
    loss('30', '10', null),
    loss('5', '10', '9'),
  ])
  const { sum, refused } = lossSoFar(theCase, ['operation-1'], bloodInSwabs)
  expect(sum && [sayAmount(sum.atLeast), sayAmount(sum.atMost)]).toEqual(['40 mL', '50 mL'])
  expect(refused).toBe(1)
  expect(lossSoFar(theCase, ['operation-2'], bloodInSwabs)).toEqual({ sum: undefined, refused: 0 })
})
