import { type ChildProcess, execFileSync, spawn } from 'node:child_process'
import { chownSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import pg from 'pg'
import { ensureDebian } from '../../../scripts/ensure-debian.mjs'

/** A real PostgreSQL server in a temporary folder, reached by a socket in it; nothing of it stays behind. */
export type PostgresForTests = {
  /** Makes an empty database and gives its address. */
  readonly newDatabase: () => Promise<string>
  /** The server's process, for tests that end it. */
  readonly stop: () => Promise<void>
}

/** True when the person running the tests asked, visibly, to go without PostgreSQL. */
export const skipPostgres = process.env.QUIET_EAR_SKIP_POSTGRES === '1'
if (skipPostgres) console.warn('SKIPPED: everything on PostgreSQL, because QUIET_EAR_SKIP_POSTGRES=1.')

/** Starts the server as an unprivileged user, installing Debian's package first where that is possible. */
export async function startPostgres(): Promise<PostgresForTests> {
  const programs = findPrograms() ?? installed()
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-pg-'))
  const user = ordinaryUser()
  if (user) chownSync(folder, user.uid, user.gid)
  const data = join(folder, 'data')
  const as = user ? { uid: user.uid, gid: user.gid } : {}
  const initdb = ['-D', data, '-U', 'quiet_ear', '-A', 'trust', '-E', 'UTF8', '--locale=C.UTF-8']
  execFileSync(join(programs, 'initdb'), initdb, { ...as, cwd: folder, stdio: ['ignore', 'ignore', 'inherit'] })
  const server = startServer(programs, folder, as)
  let databases = 0
  const address = (name: string) => `postgresql://quiet_ear@localhost/${name}?host=${encodeURIComponent(folder)}`
  try {
    await untilItAnswers(address('postgres'), server)
  } catch (error) {
    await stopServer(server, folder)
    throw error
  }
  return {
    newDatabase: async () => {
      databases += 1
      const name = `clinic_${databases}`
      await query(address('postgres'), `create database ${name}`)
      return address(name)
    },
    stop: () => stopServer(server, folder),
  }
}

type User = { readonly uid?: number; readonly gid?: number }

/** With fsync on, as shipped; it ends when this process ends, even when this process is killed. */
function startServer(programs: string, folder: string, as: User): ChildProcess {
  const settings = [
    'listen_addresses=',
    `unix_socket_directories=${folder}`,
    'max_connections=60',
    'log_statement=none',
  ]
  const server = [
    join(programs, 'postgres'),
    '-D',
    join(folder, 'data'),
    ...settings.flatMap((setting) => ['-c', setting]),
  ]
  const setpriv = ['/usr/bin/setpriv', '/bin/setpriv'].find((path) => existsSync(path))
  const identity = as.uid === undefined ? [] : [`--reuid=${as.uid}`, `--regid=${as.gid}`, '--clear-groups']
  const stdio = ['ignore', 'ignore', 'ignore'] as const
  if (setpriv) {
    return spawn(setpriv, [...identity, '--pdeathsig=INT', ...server], { cwd: folder, stdio: [...stdio] })
  }
  return spawn(server[0] as string, server.slice(1), { ...as, cwd: folder, stdio: [...stdio] })
}

async function stopServer(server: ChildProcess, folder: string): Promise<void> {
  const ended = new Promise((resolve) => server.once('exit', resolve))
  if (server.exitCode === null && server.signalCode === null) {
    server.kill('SIGINT')
    await ended
  }
  rmSync(folder, { recursive: true, force: true })
}

async function untilItAnswers(address: string, server: ChildProcess): Promise<void> {
  const deadline = Date.now() + 60_000
  for (;;) {
    try {
      return await query(address, 'select 1')
    } catch (error) {
      if (server.exitCode !== null) throw new Error('PostgreSQL ended at once instead of starting.', { cause: error })
      if (Date.now() > deadline) throw new Error('PostgreSQL did not answer within a minute.', { cause: error })
      await new Promise((resolve) => setTimeout(resolve, 100))
    }
  }
}

async function query(connectionString: string, text: string): Promise<void> {
  const client = new pg.Client({ connectionString, connectionTimeoutMillis: 5_000 })
  await client.connect()
  try {
    await client.query(text)
  } finally {
    await client.end()
  }
}

/** The folder of initdb and postgres: Debian keeps them per version, others put them on the path. */
function findPrograms(): string | undefined {
  const debian = '/usr/lib/postgresql'
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : []
  const folders = [...versions.map((version) => join(debian, version, 'bin')), ...(process.env.PATH ?? '').split(':')]
  return folders.find((folder) => existsSync(join(folder, 'initdb')) && existsSync(join(folder, 'postgres')))
}

function installed(): string {
  ensureDebian(['postgresql'])
  const programs = findPrograms()
  if (programs) return programs
  throw new Error(
    'PostgreSQL is needed for these tests: install it (Debian: apt-get install postgresql), or set QUIET_EAR_SKIP_POSTGRES=1.',
  )
}

/** PostgreSQL refuses to run as root, so root lends it an ordinary user. */
function ordinaryUser(): { uid: number; gid: number } | undefined {
  if (process.getuid?.() !== 0) return undefined
  for (const name of ['postgres', 'nobody']) {
    const line = readFileSync('/etc/passwd', 'utf8')
      .split('\n')
      .find((text) => text.startsWith(`${name}:`))
    const [, , uid, gid] = line?.split(':') ?? []
    if (uid && gid) return { uid: Number(uid), gid: Number(gid) }
  }
  throw new Error('PostgreSQL does not run as root, and there is no user postgres or nobody to run it as.')
}
