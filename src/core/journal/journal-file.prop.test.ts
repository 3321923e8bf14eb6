import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sealAll } from './chain.ts'
import { entryMaker, testId } from './entries-for-tests.ts'
import type { Entry, StoredEntry } from './entry.ts'
import { JournalFileBroken, type JournalLine, JournalReader, JournalWriter } from './journal-file.ts'

function sealed(entries: readonly Entry[]): StoredEntry[] {
  return sealAll(entries, (_, place) => `2026-03-02T08:00:00.${String(place).padStart(3, '0')}Z`)
}

function write(lines: readonly JournalLine[]): string {
  const writer = new JournalWriter()
  return lines.map((line) => writer.line(line)).join('') + writer.end()
}

function read(text: string): JournalLine[] {
  const reader = new JournalReader()
  const lines = text.split('\n')
  if (lines.at(-1) === '') lines.pop()
  const found = lines.map((line) => reader.line(line)).filter((line) => line !== undefined)
  reader.finish()
  return found
}

function sample(): JournalLine[] {
  const make = entryMaker()
  const entries = [
    make({ kind: 'usual-plan' }),
    make({ kind: 'identity' }),
    make({ kind: 'weight' }),
    make({ stream: 'case:0002', kind: 'note', body: { text: 'Zoë, "quoted",\nnew line' } }),
    make({ kind: 'weight', supersedes: [testId(3)], reason: 'Scale was not at zero.' }),
    { ...make(), kind: 'from-the-future', version: 7, body: { any: ['thing', 1, null] } },
  ]
  return [
    { type: 'quiet-ear', format: 1, clinic: 'clinic-1' },
    {
      type: 'row',
      register: 'person',
      id: 'person-surgeon',
      revision: 1,
      body: { name: 'A. Surgeon', role: 'surgeon', letters: null },
      by: 'import',
      at: '2026-03-01T08:00:00.000Z',
    },
    ...sealed(entries).map((entry) => ({ type: 'entry' as const, ...entry })),
    { type: 'kept-aside', id: testId(2), receivedAt: '2026-03-02T09:00:00.000Z', text: '{"other":"bytes"}' },
  ]
}

describe('the journal file', () => {
  it('is read back and written again to the same bytes', () => {
    const text = write(sample())
    expect(read(text)).toEqual(sample())
    expect(write(read(text))).toBe(text)
  })

  it('gives away any changed byte, and names the line', () => {
    const text = write(sample())
    const bytes = new TextEncoder().encode(text)
    fc.assert(
      fc.property(fc.nat({ max: bytes.length - 2 }), fc.integer({ min: 1, max: 255 }), (place, change) => {
        const changed = Uint8Array.from(bytes)
        changed[place] = (changed[place] ?? 0) ^ change
        const broken = new TextDecoder().decode(changed)
        fc.pre(broken !== text)
        try {
          read(broken)
        } catch (error) {
          if (!(error instanceof JournalFileBroken)) throw error
          const lineOf = text.slice(0, new TextDecoder().decode(bytes.slice(0, place)).length).split('\n').length
          // A changed line break joins or splits lines: then the line before or after is named.
          expect(Math.abs(error.line - lineOf)).toBeLessThanOrEqual(1)
          return
        }
        throw new Error(`A changed byte at ${place} was not found.`)
      }),
      { numRuns: 600 },
    )
  })

  it('gives away a file that was cut off anywhere', () => {
    const text = write(sample())
    fc.assert(
      fc.property(fc.nat({ max: text.length - 2 }), (length) => {
        expect(() => read(text.slice(0, length))).toThrow(JournalFileBroken)
      }),
    )
  })

  it('gives away a removed, a doubled and two swapped lines', () => {
    const lines = write(sample()).trimEnd().split('\n')
    for (let place = 0; place < lines.length; place += 1) {
      const line = lines[place] as string
      expect(() => read(lines.toSpliced(place, 1).join('\n')), `without line ${place + 1}`).toThrow(JournalFileBroken)
      expect(() => read(lines.toSpliced(place, 0, line).join('\n')), `line ${place + 1} twice`).toThrow(
        JournalFileBroken,
      )
    }
    const [a, b] = [lines[3], lines[4]] as [string, string]
    expect(() => read(lines.toSpliced(3, 2, b, a).join('\n'))).toThrow('Line 4')
  })

  it('is refused with a second head, behind which another clinic could stand', () => {
    const lines = sample()
    const twice = write([...lines, { type: 'quiet-ear', format: 1, clinic: 'clinic-2' }])
    expect(() => read(twice)).toThrow(`Line ${lines.length + 1}: a journal file has one head line`)
  })

  it('verifies with an erased body when an erasure entry orders it, and not without', () => {
    const make = entryMaker()
    const secret = make({ kind: 'note', body: { text: 'A name that must go' } })
    const order = make({
      kind: 'erasure',
      body: { entry: secret.id, because: 'Asked for.', orderedBy: 'person-manager' },
    })
    const [first, second] = sealed([secret, order]) as [StoredEntry, StoredEntry]
    const erased = { ...first, body: null, erased: { on: '2026-03-02T08:00:00.000Z', by: 'person-manager' } }
    const head: JournalLine = { type: 'quiet-ear', format: 1, clinic: 'clinic-1' }
    const file = write([head, { type: 'entry', ...erased }, { type: 'entry', ...second }])
    expect(read(file)).toHaveLength(3)
    expect(() => read(write([head, { type: 'entry', ...erased }]))).toThrow('no erasure entry orders it')
  })
})
