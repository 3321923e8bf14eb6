import { describe, expect, it } from 'vitest'
import { sealAll } from '#core/journal/chain.ts'
import { entryMaker } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { fold } from '#core/journal/fold.ts'
import type { PaperInput } from '../case/paper-input.ts'
import { isPaper } from '../case/paper-input.ts'
import { exampleEntries, fileAround, inputFor } from '../case/sample-case-for-tests.ts'
import { renderText } from '../render/text.ts'
import { wholeRecord } from './whole-record.ts'

function printed(input: PaperInput): string {
  const paper = wholeRecord.of(input)
  if (!isPaper(paper)) throw new Error(paper.because)
  return renderText(paper).replaceAll(/\s+/g, ' ')
}

const make = entryMaker()
const operation = { kind: 'operation', animal: 'animal-1', operation: 'operation-1' } as const
const at = '2026-03-02T09:30:00.000Z'
const given = make({ kind: 'drug-given', at, subject: operation })

function around(entries: readonly Entry[], house: readonly Entry[] = []): PaperInput {
  const file = fileAround([])
  return inputFor([], { file: { ...file, theCase: fold(entries), house: fold(house) } })
}

describe('the whole record', () => {
  it('holds every entry once, numbered in the order it happened, and the same bytes twice', () => {
    const input = inputFor(exampleEntries())
    const text = printed(input)
    for (const place of input.file.theCase.lines.keys()) expect(text).toContain(` ${place + 1}. `)
    expect(printed(inputFor(exampleEntries()))).toBe(text)
  })

  it('keeps a superseded dose legible beside the correction and its reason', () => {
    const older = {
      ...given,
      body: { ...(given.body as object), written: 'the first reading of the syringe' },
    } as Entry
    const right = make({
      kind: 'drug-given',
      at,
      subject: operation,
      supersedes: [given.id],
      reason: 'The syringe was read again.',
    })
    const text = printed(around([older, right]))
    expect(text).toContain('the first reading of the syringe')
    expect(text).toMatch(/SUPERSEDED: by entry 2, .*The syringe was read again\./)
    expect(text).toContain('entry 1; The syringe was read again.')
  })

  it('marks an entry that was written days later', () => {
    const late = { ...given, writtenAt: '2026-03-05T09:00:00.000Z' } as Entry
    expect(printed(around([late]))).toContain('written 3 days after it happened')
    expect(printed(around([{ ...given, writtenAt: at } as Entry]))).not.toContain('after it happened')
  })

  it('names each of two policies on its own days, and nothing that was written afterwards', () => {
    const policy = (value: string, day: string, more: object = {}) =>
      ({
        ...make({
          kind: 'house-policy',
          at: day,
          subject: { kind: 'clinic' },
          body: { policy: 'lasting-deficit-days', value, because: 'Agreed at a meeting.' },
          ...more,
        }),
        stream: 'clinic',
        writtenAt: day,
      }) as Entry
    const first = policy('180', '2026-03-01T08:00:00.000Z')
    const second = policy('270', '2026-03-04T08:00:00.000Z', { supersedes: [first.id] })
    const weight = (day: string) => make({ kind: 'weight', at: day })
    const days = ['2026-02-27', '2026-03-02', '2026-03-05'].map((day) => weight(`${day}T10:00:00.000Z`))
    const text = printed(around(days, [first, second]))
    expect(text).toMatch(/House policies: none set\..*lasting-deficit-days = 180\..*lasting-deficit-days = 270\./)
    const afterwards = { ...first, writtenAt: '2026-03-20T08:00:00.000Z' } as Entry
    expect(printed(around(days, [afterwards]))).not.toContain('= 180')
  })

  it('says that a content was erased, on which day and by whose order, and shows none of it', () => {
    const note = make({ kind: 'note', at, body: { text: 'Words that had to go.' } })
    const [stored] = sealAll([note], () => at)
    if (!stored) throw new Error('not sealed')
    const order = {
      ...make({
        kind: 'erasure',
        at: '2026-04-01T09:00:00.000Z',
        subject: { kind: 'clinic' },
        body: { entry: note.id, because: 'The owner asked.', orderedBy: 'person-surgeon' },
      }),
      stream: 'clinic',
    } as Entry
    const file = fileAround([])
    const erased = { ...stored, body: null, erased: { on: '2026-04-01', by: 'person-surgeon' } }
    const text = printed(inputFor([], { file: { ...file, theCase: fold([erased]), house: fold([order]) } }))
    expect(text).toMatch(/erased on 1 April 2026.* by Ada Surgeon/)
    expect(text).not.toContain('had to go')
  })

  it('sees a chain that does not hold', () => {
    const sealed = sealAll(exampleEntries(), () => at)
    const input = (entries: typeof sealed) => {
      const file = { ...fileAround([]), theCase: fold(entries) }
      return printed(inputFor([], { file }))
    }
    expect(input(sealed)).toContain('each names the hash of the one before')
    expect(input(sealed.filter((_, place) => place !== 2))).toContain('the chain does not hold')
  })
})
