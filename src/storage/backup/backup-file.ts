import { createHash } from 'node:crypto'
import { createReadStream, existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { StoreError } from '#actions/store.ts'

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
