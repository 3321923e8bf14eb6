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
  if (issue.code === 'unrecognized_keys') return refuseUnknown(issue.path, issue.keys[0] ?? '')
  const path = dotted(issue.path)
  const params = 'params' in issue ? (issue.params as { code?: unknown } | undefined) : undefined
  const code = typeof params?.code === 'string' ? params.code : issue.code.replaceAll('_', '-')
  const where = path === '' ? 'The input' : path
  throw new InputError(code, path, `${where}: ${issue.message}`)
}

/** A misspelt field must never pass as one that was left out. */
function refuseUnknown(path: readonly PropertyKey[], key: string): never {
  const at = dotted([...path, key])
  throw new InputError(
    'unknown-field',
    at,
    `${at}: "${key}" is not a field that is read here; check its spelling or leave it out.`,
  )
}

function dotted(path: readonly PropertyKey[]): string {
  return path
    .map((step) => (typeof step === 'number' ? `[${step}]` : `.${String(step)}`))
    .join('')
    .replace(/^\./, '')
}
