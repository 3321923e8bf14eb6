/**
 * An answer or a refusal: a normal "no" is a value, only a bug is thrown.
 *
 * @example
 * const result = divideSafely(1, 0)
 * if (result.kind === 'refusal') return result.refusal.because
 */
export type Outcome<Answer, Refusal> =
  | { readonly kind: 'answer'; readonly answer: Answer }
  | { readonly kind: 'refusal'; readonly refusal: Refusal }

export function answer<Answer>(value: Answer): Outcome<Answer, never> {
  return { kind: 'answer', answer: value }
}

export function refuse<const Refusal>(refusal: Refusal): Outcome<never, Refusal> {
  return { kind: 'refusal', refusal }
}

/** Ends a switch over a closed union; a new member makes the call fail to compile. */
export function never(value: never): never {
  throw new Error(`Unexpected value: ${JSON.stringify(value)}`)
}
