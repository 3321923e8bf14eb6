import { shellInEnglish as words } from '#content/wording/app-shell.ts'
import { fill } from '#core/outcome/finding.ts'
import { measureClock } from './device.ts'

/** The server said no, with its code, field and sentence. */
export class Refused extends Error {
  readonly status: number
  readonly code: string
  readonly path: string

  constructor(status: number, code: string, path: string, message: string) {
    super(message)
    this.name = 'Refused'
    this.status = status
    this.code = code
    this.path = path
  }
}

/** Nobody answered: the network or the server is away. Nothing is known about what became of the request. */
export class Unreachable extends Error {
  constructor(cause?: unknown) {
    super(words.unreachable, { cause })
    this.name = 'Unreachable'
  }
}

/** Who of the people enrolled at this device acts now; sent with every request. */
let acting: string | null = null
export function actAs(person: string | null): void {
  acting = person
}

/** Called when the server says that nobody is signed in at this device any more, or not the person who acts. */
export const onSignedOut = new Set<() => void>()

const patience = 20_000

/**
 * Calls one action of the server. Throws Refused with the server's sentence, or Unreachable.
 *
 * @example await call<Lists>('read-lists', {})
 */
export async function call<Answer>(action: string, input: unknown): Promise<Answer> {
  const { status, body } = await ask(`/api/actions/${action}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(input),
  })
  if (status < 300) return body as Answer
  throw refusedBy(status, body)
}

/**
 * The same, where an answer with a status above 299 is an answer too (entries that were refused one by one). `by`: who
 * wrote what is sent, when somebody else acts by now.
 */
export async function callAny(action: string, input: unknown, by?: string): Promise<{ status: number; body: unknown }> {
  const headers = { 'content-type': 'application/json', ...(by !== undefined && { 'x-quiet-ear-person': by }) }
  return ask(`/api/actions/${action}`, { method: 'POST', headers, body: JSON.stringify(input) })
}

/** Sends the bytes of a picture or paper; the answer is the hash it is kept under, after location data was taken out. */
export async function sendFile(bytes: Blob, mediaType: string): Promise<{ hash: string; bytes: number }> {
  const { status, body } = await ask('/api/files', {
    method: 'PUT',
    headers: { 'content-type': mediaType },
    body: bytes,
  })
  if (status < 300) return body as { hash: string; bytes: number }
  throw refusedBy(status, body)
}

async function ask(path: string, init: RequestInit): Promise<{ status: number; body: unknown }> {
  const sentAt = Date.now()
  const headers = new Headers(init.headers)
  if (acting !== null && !headers.has('x-quiet-ear-person')) headers.set('x-quiet-ear-person', acting)
  let response: Response
  let text: string
  try {
    response = await fetch(path, { ...init, headers, signal: AbortSignal.timeout(patience) })
    text = await response.text()
  } catch (error) {
    throw new Unreachable(error)
  }
  // A server that is just stopping, or a proxy before it, answers for nobody.
  if (response.status === 502 || response.status === 504) throw new Unreachable()
  const body = jsonOf(text)
  if (typeof body === 'object' && body !== null && 'serverTime' in body) measureClock(String(body.serverTime), sentAt)
  if (response.status === 401 || response.status === 403) {
    const { code } = refusedBy(response.status, body)
    if (code === 'not-signed-in' || code === 'not-enrolled') for (const listener of onSignedOut) listener()
  }
  return { status: response.status, body }
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return null
  }
}

export function refusedBy(status: number, body: unknown): Refused {
  const { code, path, message } = (body as { error?: { code?: string; path?: string; message?: string } })?.error ?? {}
  return new Refused(
    status,
    code ?? `status-${status}`,
    path ?? '',
    message ?? fill(words.serverFailed, { status: String(status) }),
  )
}
