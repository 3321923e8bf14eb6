/** A part of the app could not be had from the server: it has another version by now, or does not answer. */
export class PartNotLoaded extends Error {
  /** Forgets the attempt, so that showing the part loads it anew. */
  readonly forget: () => void

  constructor(cause: unknown, forget: () => void) {
    super(cause instanceof Error ? cause.message : String(cause), { cause })
    this.forget = forget
  }
}
