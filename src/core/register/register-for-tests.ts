import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { type Register, registerStream, registersOf } from './register.ts'

type Body = BodyOf<'register-line'>
export const of = { drug: 'methadone', strength: { value: '10', unit: 'mg/mL' }, form: 'injection' } as const
export const make = entryMaker()
export const second = entryMaker({ device: { ...make().device, id: 'tablet-2' } }, 2)

export function bodyOf(what: Body['what'], millilitres: string, more: Partial<Body> = {}): Body {
  const amount = { value: millilitres, unit: 'mL' } as const
  return { ...of, what, amount, ampoule: null, case: null, paper: null, witness: 'person-nurse', text: null, ...more }
}

export function line(what: Body['what'], millilitres: string, more: Partial<Body> = {}, by = make): Entry {
  return by({ kind: 'register-line', stream: registerStream(of), body: bodyOf(what, millilitres, more) })
}

export function given(milligrams: string, ampoule: string | null): Entry {
  return make({
    kind: 'drug-given',
    body: {
      drug: 'methadone',
      written: null,
      amount: { value: milligrams, unit: 'mg' },
      volume: null,
      route: 'IM',
      site: null,
      use: 'analgesia_bolus',
      line: null,
      batch: null,
      ampoule,
    },
  })
}

export function wasted(milligrams: string, ampoule: string, witness: string | null = 'person-nurse'): Entry {
  const amount = { value: milligrams, unit: 'mg' } as const
  return make({ kind: 'drug-wasted', body: { drug: 'methadone', amount, ampoule, witness, because: 'Rest.' } })
}

export const shelf = make({
  kind: 'shelf-item',
  body: {
    item: 'methadone-10',
    label: 'Methadone',
    divides: null,
    expires: null,
    outSince: null,
    controlled: 'yes',
    ...of,
  },
})

/** The one register of these entries in a house that marks methadone. */
export function read(...entries: Entry[]): Register {
  const [register] = registersOf(fold(entries), fold([shelf]))
  if (!register) throw new Error('no register')
  return register
}
