import { describe, expect, it } from 'vitest'
import { fold } from '#core/journal/fold.ts'
import { inRegisterUnit } from './as-register-unit.ts'
import { registerStream, registersOf } from './register.ts'
import { bodyOf, given, line, make, of, read, second, shelf, wasted } from './register-for-tests.ts'

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

  it('takes nobody for the witness of their own line', () => {
    expect(codes(read(line('opening', '10', { witness: 'person-surgeon' })))).toEqual(['witness-missing'])
    expect(codes(read(line('opening', '10', { witness: 'person-nurse' })))).toEqual([])
  })

  it('takes a second person who looks at it afterwards and says so, not its writer again', () => {
    const alone = line('opening', '10', { witness: null })
    const again = (person: string) =>
      make({
        kind: 'register-line',
        stream: registerStream(of),
        author: { kind: 'person', person },
        body: bodyOf('opening', '10', { witness: null }),
        supersedes: [alone.id],
        reason: 'Counted again the next morning; it agrees.',
      })
    expect(codes(read(alone, again('person-surgeon')))).toEqual(['witness-missing'])
    expect(codes(read(alone, again('person-nurse')))).toEqual([])
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
    // Unchanged until it is settled.
    expect(open.balance.toFixed()).toBe('10')
    expect(open.drawn.toFixed()).toBe('0')
    expect(open.lines.map(({ balance }) => balance?.toFixed())).toEqual(['10', '10', '10'])
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
