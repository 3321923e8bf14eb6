import { z } from 'zod'
import type { Json } from '#core/journal/canonical.ts'

/** One calculation of the audit: what it takes, and what it gives as plain JSON. */
export type AuditOperation = {
  readonly op: string
  readonly fields: z.ZodObject
  readonly run: (input: never) => Readonly<Record<string, Json>>
}

/** Ties what a calculation takes to what it reads. */
export function operation<const Name extends string, Shape extends z.ZodRawShape>(
  op: Name,
  shape: Shape,
  run: (input: z.output<z.ZodObject<Shape>>) => Readonly<Record<string, Json>>,
) {
  return { op, fields: z.strictObject(shape), run: run as AuditOperation['run'] } as const
}

/** A whole number from `least` on; says by itself what no other reader says. */
export const whole = (least: number) => z.int({ error: notWhole }).min(least)
const notWhole = ({ code, input }: { readonly code?: string; readonly input?: unknown }) =>
  code !== 'invalid_type'
    ? undefined
    : input === undefined
      ? 'is missing; write a whole number.'
      : 'must be a whole number.'

/** So many events among so many cases. */
export const counted = z
  .strictObject({ events: whole(0), total: whole(1).max(1_000_000) })
  .refine(({ events, total }) => events <= total, {
    path: ['events'],
    error: 'there are more events than cases; write at most the total.',
  })

/** A risk that is neither impossible nor sure. */
export const share = z.number().gt(0).lt(1)
export const confidence = z.number().gt(0).lt(1).default(0.95)

/** An end that is not finite has no number in JSON: null, and the text says so. */
export function end(value: number): number | null {
  return Number.isFinite(value) ? value : null
}

export function ends({ low, high }: { readonly low: number; readonly high: number }): [number | null, number | null] {
  return [end(low), end(high)]
}
