import { z } from 'zod'
import type { StoredEntry } from '#core/journal/entry.ts'

/** An accepted entry as actions answer it: said for the description of the interface, read again by the fold. */
export const storedEntrySchema = z.object({
  header: z.record(z.string(), z.unknown()),
  body: z.unknown(),
  bodyHash: z.string(),
  envelope: z.record(z.string(), z.unknown()),
  erased: z.object({ on: z.string(), by: z.string() }).nullable(),
}) as unknown as z.ZodType<StoredEntry>
