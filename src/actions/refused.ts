/** Why a request is turned away although it can be read: a stable code, and a sentence that says what would be right. */
export class Refused extends Error {
  readonly status: 401 | 403 | 404 | 409 | 429 | 503
  readonly code: string
  readonly path: string
  /** When to try again, for `too-many-tries`. */
  readonly again: string | null

  constructor(status: Refused['status'], code: string, message: string, about: { path?: string; again?: string } = {}) {
    super(message)
    this.name = 'Refused'
    this.status = status
    this.code = code
    this.path = about.path ?? ''
    this.again = about.again ?? null
  }
}
