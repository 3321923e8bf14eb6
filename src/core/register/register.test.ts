import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { type BodyOf, fold } from '#core/journal/fold.ts'
import { inRegisterUnit } from './as-register-unit.ts'
import { registerStream, registersOf } from './register.ts'

type Body = BodyOf<'register-line'>
const of = { drug: 'methadone', strength: { value: '10', unit: 'mg/mL' }, form: 'injection' } as const
const make = entryMaker()
const second = entryMaker({ device: { ...make().device, id: 'tablet-2' } }, 2)
const bodyOf = (what: Body['what'], millilitres: string, more: Partial<Body> = {}): Body => ({
  ...of,
  what,
  amount: { value: millilitres, unit: 'mL' },
  ampoule: null,
  case: null,
  paper: null,
  witness: 'person-nurse',
  text: null,
  ...more,
})
const line = (what: Body['what'], millilitres: string, more: Partial<Body> = {}, by = make) =>
  by({ kind: 'register-line', stream: registerStream(of), body: bodyOf(what, millilitres, more) })
const given = (milligrams: string, ampoule: string | null) =>
  make({
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
const wasted = (milligrams: string, ampoule: string, witness: string | null = 'person-nurse') =>
  make({
    kind: 'drug-wasted',
    body: { drug: 'methadone', amount: { value: milligrams, unit: 'mg' }, ampoule, witness, because: 'Rest.' },
  })
const shelf = make({
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
const read = (...entries: Entry[]) => {
  const [register] = registersOf(fold(entries), fold([shelf]))
  if (!register) throw new Error('no register')
  return register
}
const codes = (register: ReturnType<typeof read>) => register.findings.map(({ code }) => code)

describe('a controlled-drug register', () => {
  it('is there for a product the house marks, before its first line', () => {
    expect(codes(read())).toEqual(['no-opening'])
  })

  it('is not there for a product nobody marked', () => {
    const unmarked = { ...shelf, body: { ...(shelf.body as object), controlled: null } }
    expect(registersOf(fold([]), fold([unmarked]))).toEqual([])
  })

  it('adds opening and received, takes off what was drawn, and runs a balance', () => {
    const register = read(
      line('opening', '10'),
      line('received', '5'),
      line('drawn', '1', { ampoule: 'A-1' }),
      given('5.5', 'A-1'),
      wasted('4.5', 'A-1'),
    )
    expect(register.balance.toFixed()).toBe('14')
    expect(register.lines.map(({ balance }) => balance?.toFixed())).toEqual(['10', '15', '14'])
    expect(codes(register)).toEqual([])
  })

  it('shows a draw that is not all given or wasted, with the rest', () => {
    const register = read(line('opening', '10'), line('drawn', '1', { ampoule: 'A-1' }), given('5.5', 'A-1'))
    expect(register.findings).toMatchObject([
      { code: 'draw-differs', about: { drawn: '1 mL', given: '0.55 mL', wasted: '0 mL', left: '0.45 mL' } },
    ])
  })

  it('says that nobody witnessed the waste', () => {
    const entries = [line('opening', '10'), line('drawn', '1', { ampoule: 'A-1' }), wasted('10', 'A-1', null)]
    expect(codes(read(...entries))).toEqual(['witness-missing'])
  })

  it('shows a dose given without a draw, or without a number, since it was opened and not before', () => {
    const before = given('3', null)
    const register = read(before, line('opening', '10'), given('3', null), given('2', 'A-9'))
    expect(codes(register)).toEqual(['given-without-ampoule', 'given-not-drawn'])
  })

  it('keeps a count that differs open until what is missing is written', () => {
    const count = [line('opening', '10'), line('counted', '9.5')]
    expect(read(...count).findings).toMatchObject([{ code: 'count-differs', about: { left: '0.5 mL' } }])
    expect(codes(read(...count, line('lost', '0.2')))).toEqual(['count-differs'])
    const explained = read(...count, line('lost', '0.2'), line('lost', '0.3'))
    expect(codes(explained)).toEqual([])
    expect(explained.balance.toFixed()).toBe('9.5')
  })

  it('keeps an amended line readable and counts the new one', () => {
    const opening = line('opening', '10')
    const wrong = line('received', '50')
    const right = make({
      kind: 'register-line',
      stream: registerStream(of),
      body: bodyOf('received', '5'),
      supersedes: [wrong.id],
      reason: 'One box, not ten.',
    })
    const register = read(opening, wrong, right)
    expect(register.balance.toFixed()).toBe('15')
    expect(register.lines.map(({ entry, balance }) => [entry.state, balance?.toFixed()])).toEqual([
      ['live', '10'],
      ['superseded', undefined],
      ['live', '15'],
    ])
  })

  it('shows two devices that drew from one ampoule offline side by side until a person settles it', () => {
    const opening = line('opening', '10')
    const here = line('drawn', '1', { ampoule: 'A-1' })
    const there = { ...line('drawn', '1', { ampoule: 'A-1' }, second), happenedAt: here.happenedAt }
    const rest = [given('10', 'A-1')]
    const open = read(opening, here, there, ...rest)
    expect(codes(open)).toEqual(['draw-differs', 'said-twice'])
    expect(open.balance.toFixed()).toBe('8')
    const both = { ...line('drawn', '1', { ampoule: 'A-1' }), supersedes: [here.id, there.id], reason: 'One draw.' }
    const settled = read(opening, here, there, both, ...rest)
    expect(codes(settled)).toEqual([])
    expect(settled.balance.toFixed()).toBe('9')
  })

  it('never adds what the strength does not settle', () => {
    const percent = { value: '1', unit: '%' } as const
    expect(inRegisterUnit({ value: '5', unit: 'mg' }, percent)).toBeUndefined()
    expect(inRegisterUnit({ value: '500', unit: 'ug' }, of.strength)?.toFixed()).toBe('0.05')
    expect(inRegisterUnit({ value: '1', unit: 'mg/kg/h' }, of.strength)).toBeUndefined()
  })

  it('says when the balance falls below nothing', () => {
    expect(codes(read(line('opening', '1'), line('broken', '2')))).toEqual(['below-nothing'])
  })

  it('does not know which strength was given when both drew the same number', () => {
    const weak = { ...of, strength: { value: '5', unit: 'mg/mL' } } as const
    const other = make({
      kind: 'register-line',
      stream: registerStream(weak),
      body: { ...bodyOf('drawn', '1', { ampoule: 'a-1 ' }), ...weak },
    })
    const entries = [line('opening', '10'), line('drawn', '1', { ampoule: 'A-1' }), other, given('10', 'A-1')]
    expect(codes(read(...entries))).toContain('ampoule-elsewhere')
  })
})
