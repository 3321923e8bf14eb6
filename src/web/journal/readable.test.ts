import { describe, expect, it } from 'vitest'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import { kinds } from '#core/journal/kinds/index.ts'
import { isWaiting, isWaitingRow, textOf } from './readable.ts'

const make = entryMaker()
const waiting = (entry: unknown) => ({ entry, state: 'waiting', because: null, order: 1 })
const without = (field: string) => ({ ...make(), [field]: undefined })

describe('what is kept on the device', () => {
  it('is read whatever its kind, also of one that this program does not know, and also with answers the server will refuse', () => {
    for (const { name } of kinds) expect(isWaiting(waiting(make({ kind: name })))).toBe(true)
    expect(isWaiting(waiting({ ...make(), kind: 'from-tomorrow', body: 12, more: true }))).toBe(true)
    expect(isWaiting(waiting({ ...make({ kind: 'weight' }), version: 99, body: null }))).toBe(true)
    const weight = make({ kind: 'weight' })
    const said = weight.body as object
    expect(isWaiting(waiting({ ...weight, body: { ...said, bodyCondition: 12, more: 1 } }))).toBe(true)
  })

  it.each([
    'id',
    'clinic',
    'stream',
    'kind',
    'body',
    'happenedAt',
    'writtenAt',
    'author',
    'subject',
    'supersedes',
    'attachments',
    'reason',
  ])('cannot be read without %s', (field) => expect(isWaiting(waiting(without(field)))).toBe(false))

  it.each([
    ['a time that does not exist', waiting({ ...make(), writtenAt: 'yesterday' })],
    ['a zone that does not exist', waiting({ ...make(), happenedAt: { ...make().happenedAt, zone: 'Nowhere' } })],
    ['no side', waiting({ ...make(), subject: { kind: 'ear', animal: 'a' } })],
    ['a state of another program', { ...waiting(make()), state: 'flying' }],
    ['a number where its kind has a quantity', waiting({ ...make({ kind: 'weight' }), body: { weight: 7 } })],
    ['no clock of its device', waiting({ ...make(), device: null })],
    ['no order', { ...waiting(make()), order: undefined }],
    ['no entry', { state: 'waiting', because: null, order: 1 }],
    ['nothing', null],
    ['a word', 'entry'],
  ])('cannot be read with %s', (_, value) => expect(isWaiting(value)).toBe(false))

  it('is a row of a register only with everything that its page shows', () => {
    const body = { kind: 'owner', name: 'Ada', practice: null, phone: null, email: null, address: [] }
    const row = { register: 'contact', id: 'c1', by: 'p1', body, state: 'waiting', because: null }
    expect(isWaitingRow(row)).toBe(true)
    expect(isWaitingRow({ ...row, body: { ...body, address: null } })).toBe(false)
    expect(isWaitingRow({ ...row, body: { ...body, name: undefined } })).toBe(false)
    expect(isWaitingRow({ ...row, body: null })).toBe(false)
  })

  it('is text in any case', () => {
    const ring: Record<string, unknown> = { name: 'Ada' }
    ring.self = ring
    expect(textOf({ a: 1 })).toBe('{\n  "a": 1\n}')
    expect(textOf(undefined)).toBe('undefined')
    expect(textOf(ring)).toContain('name: Ada')
    expect(textOf({ big: 12n })).toBe('big: 12')
  })
})
