import { z } from 'zod'

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
  const code =
    typeof params?.code === 'string' ? params.code : (plainCodes[issue.code] ?? issue.code.replaceAll('_', '-'))
  const where = path === '' ? 'The input' : path
  const [, expected = '', received = ''] = wrongType.exec(issue.message) ?? []
  if (expected === '') throw new InputError(code, path, `${where}: ${limitSaid(issue.message)}`)
  if (received === 'undefined')
    throw new InputError('missing-field', path, `${where} is missing; write ${kindOf(expected)}.`)
  throw new InputError(code, path, `${where} must be ${kindOf(expected)}, not ${kindOf(received)}.`)
}

const plainCodes: Readonly<Record<string, string>> = { custom: 'wrong-value' }
/** What the schema package says by itself of a value of the wrong type. */
const wrongType = /^Invalid input: expected (\w+), received (\w+)$/

const kinds: Readonly<Record<string, string>> = {
  object: 'an object {…}',
  array: 'a list […]',
  string: 'a text "…"',
  number: 'a number',
  boolean: 'true or false',
}

function kindOf(type: string): string {
  return kinds[type] ?? type
}

const limitWords: Readonly<Record<string, string>> = {
  '>=': 'at least',
  '>': 'more than',
  '<=': 'at most',
  '<': 'less than',
}

/** What the schema package says by itself of a number beyond its limits or an empty text, as a person would say it. */
function limitSaid(message: string): string {
  const [, of, sign = '', limit] = /^Too (?:small|big): expected (\w+) to (?:be|have) ([<>]=?)(\S+)/.exec(message) ?? []
  if (of === 'number') return `must be ${limitWords[sign]} ${limit}.`
  return of === 'string' && sign === '>=' && limit === '1' ? 'must not be empty.' : message
}

/** One word of a closed list; a word outside it is named together with the list. */
export function listed<const Words extends readonly [string, ...string[]]>(words: Words, what: string) {
  return z.enum(words, {
    error: ({ input }) =>
      input === undefined
        ? `is missing; write one of ${words.join(', ')}.`
        : `${JSON.stringify(input)} is not a ${what}; write one of ${words.join(', ')}.`,
  })
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
