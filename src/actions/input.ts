import type { z } from 'zod'

/** What was wrong with an input: a stable code, the field, and a sentence that says what would be right. */
export class InputError extends Error {
  readonly code: string
  readonly path: string

  constructor(code: string, path: string, message: string) {
    super(message)
    this.name = 'InputError'
    this.code = code
    this.path = path
  }
}

/** Reads an input at the door, or throws an InputError that names the first wrong field. */
export function readInput<Output>(schema: z.ZodType<Output>, input: unknown): Output {
  const result = schema.safeParse(input)
  if (result.success) return result.data
  const issue = result.error.issues[0]
  if (!issue) throw new InputError('wrong-input', '', 'The input cannot be read.')
  const path = issue.path
    .map((step) => (typeof step === 'number' ? `[${step}]` : `.${String(step)}`))
    .join('')
    .replace(/^\./, '')
  const params = 'params' in issue ? (issue.params as { code?: unknown } | undefined) : undefined
  const code = typeof params?.code === 'string' ? params.code : issue.code.replaceAll('_', '-')
  const where = path === '' ? 'The input' : path
  throw new InputError(code, path, `${where}: ${issue.message}`)
}
