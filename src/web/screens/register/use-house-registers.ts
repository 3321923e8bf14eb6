import { useMemo } from 'react'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { Case } from '#core/journal/fold.ts'
import { type Register, registersOf } from '#core/register/register.ts'
import { useHouse, useRegisters } from '../../journal/cases.ts'
import type { Reading } from '../../journal/source.ts'

/** The registers as they stand with the shelf of the house; neither is guessed while the other is not there. */
export function useHouseRegisters(): {
  readonly reading: Reading<readonly Register[]>
  readonly file: CaseFile | null
  readonly house: Case | null
  readonly theFold: Case | null
  readonly unsent: ReadonlySet<string>
} {
  const reading = useRegisters()
  const house = useHouse()
  const file = house.kind === 'read' ? house.value.file : null
  const theFold = reading.kind === 'read' ? reading.value : null
  const all = useMemo(() => (theFold && file ? registersOf(theFold, file.house) : null), [theFold, file])
  const known: Reading<readonly Register[]> =
    reading.kind === 'read' && all
      ? { kind: 'read', value: all, from: reading.from, asOf: reading.asOf }
      : reading.kind === 'failed'
        ? reading
        : house.kind === 'failed'
          ? house
          : { kind: 'loading' }
  return { reading: known, file, house: file?.house ?? null, theFold, unsent: reading.unsent }
}
