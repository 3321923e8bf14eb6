import { type ChildProcess, spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest'
import { Browser, clinicForTests, passwordFor } from '#server/house-for-tests.ts'
import { type PostgresForTests, skipPostgres, startPostgres } from '#storage/postgres/for-tests.ts'
import { folderForTest, problem, quietEar } from './run-for-tests.ts'

type Place = { readonly args: readonly string[]; readonly env: Record<string, string> }
type Server = { readonly child: ChildProcess; readonly url: string; readonly said: string }

const children: ChildProcess[] = []
afterEach(() => {
  for (const child of children.splice(0)) child.kill('SIGKILL')
})

async function serve({ args, env }: Place): Promise<Server> {
  const { DATABASE_URL: _, QUIET_EAR_DATA: __, ...clean } = process.env
  const all = ['dist/cli.js', 'start', '--port', '0', '--no-tls', '--host', '127.0.0.1', ...args]
  const child = spawn(process.execPath, all, { env: { ...clean, ...env }, stdio: ['ignore', 'pipe', 'ignore'] })
  children.push(child)
  let said = ''
  child.stdout.setEncoding('utf8').on('data', (chunk: string) => {
    said += chunk
  })
  await expect.poll(() => said, { timeout: 60_000 }).toContain('It ends with Ctrl-C.')
  return { child, said, url: `http://127.0.0.1:${/localhost:(\d+)/.exec(said)?.[1]}` }
}

async function stop({ child }: Server): Promise<void> {
  const ended = new Promise((resolve) => child.once('exit', resolve))
  child.kill('SIGTERM')
  await ended
}

const codeIn = ({ said }: Server) => /first account +([A-Z0-9-]{14})\n/.exec(said)?.[1]

const opening = (code: string) => ({
  code,
  choice: 'empty-clinic',
  clinic: clinicForTests,
  person: { name: 'Mara Manager', role: 'manager', letters: null },
  login: 'mara',
  password: passwordFor('mara'),
  device: { id: 'office', name: 'Office' },
})

/** The only manager forgets the password; whoever holds the machine gives a new one. */
async function forgetAndReset(place: Place, running: boolean): Promise<void> {
  let server = await serve(place)
  const office = new Browser(server.url, 'office')
  expect((await office.act('open-clinic', opening(codeIn(server) ?? ''))).status).toBe(200)
  const reset = (login: string) => quietEar(['account', 'reset', '--login', login, ...place.args], '', place.env)
  if (!running) {
    expect(problem(reset('mara')).code).toBe('store-in-use')
    await stop(server)
  }
  const unknown = problem(reset('nobody'))
  expect([unknown.code, unknown.path, unknown.message]).toEqual([
    'unknown-login',
    'login',
    'Nobody signs in as "nobody" here; there are: mara.',
  ])
  const { status, out, err } = reset(' Mara ')
  expect([status, out]).toEqual([0, expect.stringMatching(/^[A-Z2-9]{4}(-[A-Z2-9]{4}){3}\n$/)])
  expect(err).toContain('Mara Manager')
  if (!running) server = await serve(place)

  const again = new Browser(server.url, 'office')
  again.cookie = office.cookie
  expect((await again.act('list-people', {})).status).toBe(401)
  const other = new Browser(server.url, 'other')
  expect((await other.signIn('mara')).error.code).toBe('wrong-login')
  expect((await other.signIn('mara', out.trim())).status).toBe(200)
  await stop(server)
  const journal = join(folderForTest(), 'out.jsonl')
  expect(quietEar(['export', ...place.args, '--out', journal], '', place.env).status).toBe(0)
  expect(quietEar(['verify', journal]).status).toBe(0)
  expect(readFileSync(journal, 'utf8')).toContain('"by":"reset-on-the-machine"')
}

describe('an account whose password is forgotten', () => {
  it('gets a new one on the data folder, once the server on it is stopped', async () => {
    await forgetAndReset({ args: ['--data', join(folderForTest(), 'data')], env: {} }, false)
  })

  it('is not looked for in a folder without a clinic', () => {
    const ran = quietEar(['account', 'reset', '--login', 'mara', '--data', join(folderForTest(), 'none')])
    expect(problem(ran).code).toBe('clinic-missing')
  })
})

describe.skipIf(skipPostgres)('accounts on a database of several servers', () => {
  let postgres: PostgresForTests
  beforeAll(async () => {
    postgres = await startPostgres()
  })
  afterAll(() => postgres?.stop())

  it('get a new password while the servers run', async () => {
    await forgetAndReset({ args: [], env: { DATABASE_URL: await postgres.newDatabase() } }, true)
  })

  it('share one code for the first account; the others say that it was printed, and a lost one is replaced', async () => {
    const place = { args: [], env: { DATABASE_URL: await postgres.newDatabase() } }
    const both = await Promise.all([serve(place), serve(place)])
    const codes = both.map(codeIn).filter((code) => code !== undefined)
    expect(codes).toHaveLength(1)
    const silent = both.find((server) => codeIn(server) === undefined)
    expect(silent?.said).toContain('was printed by another start on this database')
    expect(silent?.said).toContain('quiet-ear account first-code')

    const { status, out } = quietEar(['account', 'first-code'], '', place.env)
    expect(status).toBe(0)
    const tried = (code: string, { url }: Server) => new Browser(url, 'office').act('open-clinic', opening(code))
    for (const server of both) expect((await tried(codes[0] ?? '', server)).error.code).toBe('wrong-code')
    expect((await tried(out.trim(), both[1])).status).toBe(200)
    expect(problem(quietEar(['account', 'first-code'], '', place.env)).code).toBe('already-open')
    expect(codeIn(await serve(place))).toBeUndefined()
  })

  it('let the code of one server be used at the other', async () => {
    const place = { args: [], env: { DATABASE_URL: await postgres.newDatabase() } }
    const first = await serve(place)
    const second = await serve(place)
    const opened = await new Browser(second.url, 'office').act('open-clinic', opening(codeIn(first) ?? ''))
    expect(opened.status).toBe(200)
  })
})
