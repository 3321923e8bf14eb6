import { z } from 'zod'
import { speciesList } from '#core/animal/species.ts'
import { entryId, text } from '../answers.ts'
import type { Json } from '../canonical.ts'
import { defineKind } from '../kind.ts'
import { storedQuantity } from '../stored.ts'

/** A second person worked it out again and agrees, or does not; or nobody was there, which is printed and audited. */
export const secondCheck = defineKind({
  name: 'second-check',
  version: 2,
  subjects: ['operation', 'animal'],
  body: z.strictObject({
    of: z.array(entryId).min(1),
    verdict: z.enum(['agrees', 'disagrees', 'nobody-available']),
    text: text.nullable(),
    /** The animal for which planned lines were checked, and the fingerprint over animal and lines; null for other things. */
    plan: z
      .strictObject({
        species: z.enum(speciesList),
        weight: storedQuantity('kg').nullable(),
        fingerprint: z.string().regex(/^[0-9a-f]{64}$/, 'must be 64 hexadecimal digits'),
      })
      .nullable(),
  }),
  /** Version 1 said only which entries were checked. */
  upcasts: { 1: (older) => ({ ...(older as Record<string, Json>), plan: null }) },
  example: {
    of: ['0190a7c2-0000-7000-8000-000000000004'],
    verdict: 'agrees',
    text: null,
    plan: {
      species: 'dog',
      weight: { value: '8.2', unit: 'kg' },
      fingerprint: '5f0c6e5b7d3a4f2b9c1d8e7f6a5b4c3d2e1f0a9b8c7d6e5f4a3b2c1d0e9f8a7b',
    },
  },
})
