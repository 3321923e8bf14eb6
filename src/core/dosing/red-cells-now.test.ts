import { describe, expect, it } from 'vitest'
import { formulary } from '#content/formulary/index.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { identity } from '#core/journal/kinds/identity.ts'
import { redCellsNow } from './red-cells-now.ts'

const at = '2026-03-10T10:00:00.000Z'
type Typed = Pick<BodyOf<'blood-type'>, 'system' | 'dea1' | 'ab'>

function now(species: 'dog' | 'cat', typed?: Typed) {
  const make = entryMaker()
  const animal = make({ kind: 'identity', body: { ...identity.example, species } })
  const types = typed ? [make({ kind: 'blood-type', body: { ...typed, method: 'card', text: null } })] : []
  const said = redCellsNow(fold([animal, ...types]), at, formulary, dosingRules)
  return [said?.group, said?.findings.map(({ code, level }) => `${level} ${code}`)]
}

describe('red cells for this animal now', () => {
  it('are barred for a cat that nobody typed, and wait for a typed donor once it is', () => {
    expect(now('cat')).toEqual([undefined, ['block blood-untyped']])
    expect(now('cat', { system: 'ab', dea1: 'not-typed', ab: 'B' })).toEqual(['B', ['block donor-untyped']])
    expect(now('cat', { system: 'ab', dea1: 'not-typed', ab: 'unknown' })).toEqual([undefined, ['block blood-untyped']])
  })

  it('ask of a dog whether it is typed and was transfused before', () => {
    const asks = ['confirm dog-untyped', 'confirm transfusions-unknown']
    expect(now('dog')).toEqual([undefined, asks])
    expect(now('dog', { system: 'dea-1', dea1: 'negative', ab: 'unknown' })).toEqual(['dea-1-negative', asks])
  })

  it('are not judged while nobody wrote which animal it is', () => {
    expect(redCellsNow(fold([]), at, formulary, dosingRules)).toBeUndefined()
  })
})
