import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import { z } from 'zod'
import { canonical, hashText, type Json } from './canonical.ts'
import { type Break, ChainWalk } from './chain.ts'
import { entrySchema, instantSchema, type StoredEntry } from './entry.ts'
import { registerRows } from './registers.ts'

/**
 * The lossless journal file: JSON Lines in canonical form. First the head, then the registers, then the entries in
 * order of position with their envelopes, then what was kept aside, then the list of attachments, then the end line.
 */
export type JournalLine =
  | { readonly type: 'quiet-ear'; readonly format: 1; readonly clinic: string }
  | ({ readonly type: 'row' } & Row)
  | ({ readonly type: 'entry' } & StoredEntry)
  | { readonly type: 'kept-aside'; readonly id: string; readonly receivedAt: string; readonly text: string }
  | { readonly type: 'file'; readonly hash: string; readonly mediaType: string }

export type Row = {
  readonly register: keyof typeof registerRows
  readonly id: string
  readonly revision: number
  readonly body: { readonly [key: string]: Json } | null
  readonly by: string
  readonly at: string
}

const registerOrder = [
  'clinic',
  'closed-day',
  'contact',
  'person',
  'price',
] as const satisfies readonly Row['register'][]

/** Rows in the one order a journal file has them: by register, id and revision. */
export function rowsInOrder(rows: readonly Row[]): Row[] {
  const key = (row: Row) => `${registerOrder.indexOf(row.register)} ${row.id} ${String(row.revision).padStart(9, '0')}`
  return [...rows].sort((a, b) => (key(a) < key(b) ? -1 : 1))
}

/** Why a journal file cannot be trusted: the line, the entry when there is one, and a sentence. */
export class JournalFileBroken extends Error {
  readonly line: number
  readonly entry: string | undefined

  constructor(line: number, message: string, entry?: string) {
    super(`Line ${line}: ${message}`)
    this.name = 'JournalFileBroken'
    this.line = line
    this.entry = entry
  }
}

/** Writes lines one at a time; every line but an entry carries its own sum, and the end line sums up the file. */
export class JournalWriter {
  readonly #sum = sha256.create()
  #lines = 0

  line(line: JournalLine): string {
    const record = line as unknown as Record<string, Json>
    const text = canonical(line.type === 'entry' ? record : { ...record, sum: hashText(canonical(record)) })
    this.#lines += 1
    this.#sum.update(utf8ToBytes(`${text}\n`))
    return `${text}\n`
  }

  end(): string {
    return `${canonical({ type: 'end', lines: this.#lines, sum: bytesToHex(this.#sum.digest()) })}\n`
  }
}

const hash = z.string().regex(/^[0-9a-f]{64}$/)
const lineSchemas = {
  'quiet-ear': z.strictObject({ type: z.literal('quiet-ear'), format: z.literal(1), clinic: z.string().min(1) }),
  row: z.strictObject({
    type: z.literal('row'),
    register: z.enum(Object.keys(registerRows) as [keyof typeof registerRows, ...(keyof typeof registerRows)[]]),
    id: z.string().min(1),
    revision: z.int().min(1),
    body: z.record(z.string(), z.json()).nullable(),
    by: z.string().min(1),
    at: instantSchema,
  }),
  entry: z.strictObject({
    type: z.literal('entry'),
    header: entrySchema.omit({ body: true }),
    body: z.json(),
    bodyHash: hash,
    envelope: z.strictObject({
      position: z.int().min(1),
      sequence: z.int().min(1),
      receivedAt: instantSchema,
      correctedAt: instantSchema,
      orderCertain: z.boolean(),
      late: z.enum(['session-expired']).nullable(),
      previous: hash.nullable(),
      hash,
    }),
    erased: z.strictObject({ on: instantSchema, by: z.string().min(1) }).nullable(),
  }),
  'kept-aside': z.strictObject({
    type: z.literal('kept-aside'),
    id: z.uuid(),
    receivedAt: instantSchema,
    text: z.string(),
  }),
  file: z.strictObject({ type: z.literal('file'), hash, mediaType: z.string().min(3) }),
}

const sentences: Record<Break['because'], string> = {
  'body-changed': 'the body of this entry was changed; its hash does not fit',
  'header-or-envelope-changed': 'the header or envelope of this entry was changed; its hash does not fit',
  'chain-broken': 'this entry does not follow the entry before it in its stream; one was removed, moved or changed',
  'sequence-gap': 'an entry of this stream is missing before this one',
  'position-gap': 'an entry of the clinic is missing before this one',
  'erased-without-order': 'the body of this entry is gone and no erasure entry orders it',
}

/** Reads lines one at a time and refuses the first that is not exactly what was written. */
export class JournalReader {
  readonly #sum = sha256.create()
  readonly #walk = new ChainWalk()
  readonly #placeOf = new Map<string, number>()
  #number = 0
  #clinic: string | undefined
  #ended = false

  /** The line read, or undefined for the end line. Throws JournalFileBroken. */
  line(text: string): JournalLine | undefined {
    this.#number += 1
    if (this.#ended) this.#fail('there is text after the end line')
    const record = this.#parse(text)
    if (record.type === 'end') return this.#end(record)
    this.#sum.update(utf8ToBytes(`${text}\n`))
    const line = this.#shape(record)
    if (this.#number === 1 && line.type !== 'quiet-ear') this.#fail('a journal file begins with its head line')
    if (this.#number > 1 && line.type === 'quiet-ear') this.#fail('a journal file has one head line')
    if (line.type === 'quiet-ear') this.#clinic = line.clinic
    if (line.type === 'row') this.#row(line)
    if (line.type === 'entry') this.#entry(line)
    return line
  }

  /** After the last line: a file without its end line was cut off. */
  finish(): void {
    if (!this.#ended) {
      this.#number += 1
      this.#fail('the file stops here without its end line; it was cut off')
    }
    const found = this.#walk.finish()
    if (found) throw new JournalFileBroken(this.#placeOf.get(found.entry) ?? 0, sentences[found.because], found.entry)
  }

  #fail(message: string, entry?: string): never {
    throw new JournalFileBroken(this.#number, message, entry)
  }

  #parse(text: string): Record<string, Json> {
    if (text.startsWith('\uFEFF')) this.#fail('begins with a byte order mark that an editor added; remove it')
    if (text.endsWith('\r'))
      this.#fail('the line ends were changed to those of Windows; copy the file as it was written')
    try {
      const value = JSON.parse(text) as Json
      if (typeof value !== 'object' || value === null || Array.isArray(value)) return this.#fail('not a JSON object')
      if (canonical(value) !== text) return this.#fail('not written as this program writes it; it was edited')
      return value as Record<string, Json>
    } catch (error) {
      if (error instanceof JournalFileBroken) throw error
      return this.#fail('not JSON; the line was cut or edited')
    }
  }

  #shape(record: Record<string, Json>): JournalLine {
    const schema = Object.hasOwn(lineSchemas, String(record.type))
      ? lineSchemas[record.type as keyof typeof lineSchemas]
      : undefined
    if (!schema) return this.#fail(`"${String(record.type)}" is not a line of a journal file`)
    const { sum, ...rest } = record
    if (record.type !== 'entry' && sum !== hashText(canonical(rest)))
      return this.#fail('this line was changed; its sum does not fit')
    const parsed = schema.safeParse(record.type === 'entry' ? record : rest)
    if (parsed.success) return parsed.data as JournalLine
    const issue = parsed.error.issues[0]
    return this.#fail(`${issue?.path.join('.') ?? ''}: ${issue?.message ?? 'cannot be read'}`)
  }

  #row(line: Row): void {
    if (line.body === null) return
    const parsed = registerRows[line.register].safeParse(line.body)
    if (parsed.success) return
    const issue = parsed.error.issues[0]
    this.#fail(`${line.register} ${line.id}, ${issue?.path.join('.') ?? ''}: ${issue?.message ?? 'cannot be read'}`)
  }

  #entry(line: StoredEntry): void {
    if (line.header.clinic !== this.#clinic) this.#fail('this entry belongs to another clinic', line.header.id)
    const before = this.#placeOf.get(line.header.id)
    if (before !== undefined) this.#fail(`this entry stands in line ${before} already`, line.header.id)
    this.#placeOf.set(line.header.id, this.#number)
    const found = this.#walk.next(line)
    if (found) this.#fail(sentences[found.because], found.entry)
  }

  #end(record: Record<string, Json>): undefined {
    if (record.lines !== this.#number - 1)
      this.#fail(`the file should have ${String(record.lines)} lines before its end line`)
    if (record.sum !== bytesToHex(this.#sum.clone().digest())) this.#fail('a line before the end line was changed')
    this.#ended = true
    return undefined
  }
}
