import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'

export type Ran = {
  readonly status: number | null
  readonly out: string
  readonly err: string
  readonly json: () => unknown
}

/** Runs the bundled command line in a process of its own, as outsiders do. */
export function quietEar(args: readonly string[], input = '', env: Record<string, string> = {}): Ran {
  const { DATABASE_URL: _, QUIET_EAR_DATA: __, ...clean } = process.env
  const run = spawnSync(process.execPath, ['dist/cli.js', ...args], {
    input,
    encoding: 'utf8',
    env: { ...clean, ...env },
  })
  return { status: run.status, out: run.stdout, err: run.stderr, json: () => JSON.parse(run.stdout) }
}

/** What went wrong, as programs read it. */
export function problem(ran: Ran): { code: string; path: string; message: string } {
  return (JSON.parse(ran.err) as { error: { code: string; path: string; message: string } }).error
}

/** A folder that goes when the test ends. */
export function folderForTest(): string {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-cli-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}
