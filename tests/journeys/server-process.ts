import { type ChildProcess, spawn } from 'node:child_process'
import type { Entry } from '#core/journal/entry.ts'
import { buildEntry } from '../../scripts/build-entry.mjs'

/** Builds the server once for a test file. */
export const buildServer = () => buildEntry('tests/journeys/server-for-tests.ts', 'server-for-tests')

/** A server in a process of its own, as a clinic runs it. */
export class ServerProcess {
  readonly child: ChildProcess
  /** Its address, or undefined when it ended without one. */
  readonly url: Promise<string | undefined>
  readonly ended: Promise<number | null>
  errors = ''

  constructor(file: string, args: readonly string[]) {
    this.child = spawn(process.execPath, [file, ...args], { stdio: ['ignore', 'pipe', 'pipe'] })
    this.child.stderr?.on('data', (chunk) => {
      this.errors += chunk
    })
    this.ended = new Promise((resolve) => this.child.once('close', (code) => resolve(code)))
    this.url = new Promise((resolve) => {
      this.child.stdout?.once('data', (chunk) => resolve(String(chunk).trim()))
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

export async function postEntries(url: string, entries: readonly Entry[]): Promise<Posted> {
  const response = await fetch(`${url}/api/actions/accept-entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ clinic: 'clinic-1', entries }),
  })
  return { status: response.status, body: (await response.json()) as Posted['body'] }
}
