import { type ChildProcess, spawn } from 'node:child_process'
import { entryMaker, type MakeEntry } from '#core/journal/entries-for-tests.ts'
import type { Entry } from '#core/journal/entry.ts'
import { clinicForTests } from '#server/house-for-tests.ts'
import { buildEntry } from '../../scripts/build-entry.mjs'

/** Builds the server for one test file: others build theirs at the same time. */
export const buildServer = (name: string) => buildEntry('tests/journeys/server-for-tests.ts', `server-of-${name}`)

const started = new Set<ServerProcess>()

/** Ends what a failed test did not end, so that nothing is left running. */
export async function endAll(): Promise<void> {
  await Promise.all([...started].map((server) => server.end('SIGKILL')))
}

/** A server in a process of its own, as a clinic runs it. */
export class ServerProcess {
  readonly child: ChildProcess
  /** Its address, or undefined when it ended without one. */
  readonly url: Promise<string | undefined>
  /** The one-time code it printed; empty when somebody has an account. */
  code = ''
  readonly ended: Promise<number | null>
  errors = ''

  constructor(file: string, args: readonly string[]) {
    this.child = spawn(process.execPath, [file, ...args], { stdio: ['ignore', 'pipe', 'pipe'] })
    this.child.stderr?.on('data', (chunk) => {
      this.errors += chunk
    })
    started.add(this)
    this.ended = new Promise((resolve) => this.child.once('close', (code) => resolve(code)))
    this.ended.then(() => started.delete(this))
    this.url = new Promise((resolve) => {
      this.child.stdout?.once('data', (chunk) => {
        const [url, code = ''] = String(chunk).trim().split(' ')
        this.code = code
        resolve(url)
      })
      this.ended.then(() => resolve(undefined))
    })
  }

  async end(signal: NodeJS.Signals): Promise<number | null> {
    this.child.kill(signal)
    return this.ended
  }
}

export type Posted = {
  readonly status: number
  readonly body: { entries?: { id: string; outcome: string }[] } & Problem
}
type Problem = { error?: { code: string; message: string } }

/** Somebody signed in at one device: their clinic, and the cookie that goes with every request. */
export type SignedIn = { readonly clinic: string; readonly person: string; readonly cookie: string }

/** Opens the clinic of a new server as a clinic does, with its one-time code, and signs its surgeon in. */
export async function openClinic(url: string, code: string): Promise<SignedIn> {
  const opening = {
    code,
    choice: 'empty-clinic',
    clinic: clinicForTests,
    person: { name: 'Sven Surgeon', role: 'surgeon', letters: null },
    login: 'sven',
    password: 'the password of sven',
    device: { id: 'tablet-1', name: 'Tablet' },
  }
  const response = await fetch(`${url}/api/actions/open-clinic`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(opening),
  })
  if (response.status !== 200) throw new Error(`The clinic was not opened: ${await response.text()}`)
  const who = (await response.json()) as { clinic: { id: string }; active: string }
  const cookie = response.headers.get('set-cookie')?.split(';')[0] ?? ''
  return { clinic: who.clinic.id, person: who.active, cookie }
}

/** A maker of entries by whoever is signed in. */
export function makerOf({ clinic, person }: SignedIn, writer = 0): MakeEntry {
  return entryMaker({ clinic, author: { kind: 'person', person } }, writer)
}

/** Any action by whoever is signed in; throws what it was refused with. */
export async function act(url: string, action: string, input: object, { cookie }: SignedIn) {
  const response = await fetch(`${url}/api/actions/${action}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', cookie },
    body: JSON.stringify(input),
  })
  const body = (await response.json()) as Readonly<Record<string, unknown>>
  if (response.status !== 200) throw new Error(`${action} was refused: ${JSON.stringify(body)}`)
  return body
}

export async function postEntries(url: string, entries: readonly Entry[], who: SignedIn): Promise<Posted> {
  const response = await fetch(`${url}/api/actions/accept-entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', cookie: who.cookie },
    body: JSON.stringify({ clinic: who.clinic, entries }),
  })
  return { status: response.status, body: (await response.json()) as Posted['body'] }
}
