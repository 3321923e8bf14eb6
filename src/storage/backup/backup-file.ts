import { createHash } from 'node:crypto'
import { createReadStream, existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { StoreError } from '#actions/store.ts'
import { readEntry } from '#core/journal/accept.ts'
import { canonical, type Json } from '#core/journal/canonical.ts'
import type { Entry } from '#core/journal/entry.ts'

/** What stands beside the copy of the data: of when it is, and the sum that says it is whole. */
export const backupAbout = z.strictObject({
  format: z.literal(1),
  at: z.string(),
  version: z.string(),
  bytes: z.int(),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  clinics: z.array(z.strictObject({ clinic: z.string(), entries: z.int() })),
})
export type BackupAbout = z.infer<typeof backupAbout>

export const aboutName = 'backup.json'
/** Kept beside the backups, not in one: an older backup must not bring back what was erased after it. */
export const eraseListName = 'erasures.jsonl'

export async function sumOf(path: string): Promise<string> {
  const sum = createHash('sha256')
  for await (const chunk of createReadStream(path)) sum.update(chunk as Buffer)
  return sum.digest('hex')
}

export function readAbout(folder: string): BackupAbout {
  const path = join(folder, aboutName)
  if (!existsSync(path)) throw new StoreError('broken', `${folder} is not a backup: it holds no ${aboutName}.`)
  try {
    return backupAbout.parse(JSON.parse(readFileSync(path, 'utf8')))
  } catch (error) {
    throw new StoreError('broken', `${path} cannot be read: it was cut off or changed.`, error)
  }
}

export type Erasure = { readonly clinic: string; readonly order: Entry }

/** An erase list, one order on each line. A file that is not there is an empty list. */
export function readErasures(path: string): Erasure[] {
  if (!existsSync(path)) return []
  const lines = readFileSync(path, 'utf8')
    .split('\n')
    .filter((line) => line !== '')
  return lines.map((line, at) => {
    const read = readEntry(jsonOf(line))
    if (read.kind === 'answer') return { clinic: read.answer.clinic, order: read.answer }
    throw new StoreError('broken', `Line ${at + 1} of ${path} is no order to erase: ${read.refusal.message}`)
  })
}

export function erasuresText(erasures: readonly Erasure[]): string {
  return erasures.map(({ order }) => `${canonical(order as unknown as Json)}\n`).join('')
}

function jsonOf(line: string): unknown {
  try {
    return JSON.parse(line)
  } catch {
    return null
  }
}
