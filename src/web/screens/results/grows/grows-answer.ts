import type { z } from 'zod'
import type { antibiogramRequest } from '#actions/antibiogram/antibiogram-request.ts'
import type { readWhatGrows } from '#actions/antibiogram/read-what-grows.ts'

/** What the server worked out, and what it was asked. */
export type GrowsAnswer = z.infer<typeof readWhatGrows.output>
export type GrowsInput = z.input<typeof antibiogramRequest>
