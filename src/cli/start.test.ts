import { type ChildProcess, spawn } from 'node:child_process'
import { existsSync, readdirSync } from 'node:fs'
import { request } from 'node:https'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { folderForTest, problem, quietEar } from './run-for-tests.ts'

const children: ChildProcess[] = []
afterEach(() => {
  for (const child of children.splice(0)) child.kill('SIGKILL')
})

type Started = {
  readonly child: ChildProcess
  readonly said: string
  readonly port: number
  readonly ended: Promise<number | null>
}

/** Starts a program and waits until it has greeted. */
async function started(command: string, args: readonly string[]): Promise<Started> {
  const { DATABASE_URL: _, QUIET_EAR_DATA: __, ...env } = process.env
  const child = spawn(command, args, { env, stdio: ['ignore', 'pipe', 'pipe'] })
  children.push(child)
  let said = ''
  for (const stream of [child.stdout, child.stderr]) {
    stream?.setEncoding('utf8').on('data', (chunk) => {
      said += chunk
    })
  }
  const ended = new Promise<number | null>((resolve) => child.once('exit', resolve))
  await expect.poll(() => said, { timeout: 60_000 }).toContain('It ends with Ctrl-C.')
  return { child, said, port: Number(/http:\/\/localhost:(\d+)/.exec(said)?.[1]), ended }
}

const answers = (port: number) =>
  fetch(`http://127.0.0.1:${port}/api/health`).then(
    ({ ok }) => ok,
    () => false,
  )

describe('npm start', () => {
  it('serves the screens and the API, prints where and the first code, and ends with npm', async () => {
    const data = join(folderForTest(), 'data')
    const { child, said, port, ended } = await started('npm', ['start', '--', '--data', data, '--port', '0'])
    const page = await fetch(`http://127.0.0.1:${port}/case/tansy`)
    expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8')
    const html = await page.text()
    const script = /<script[^>]+src="([^"]+)"/.exec(html)?.[1] ?? ''
    const asset = await fetch(`http://127.0.0.1:${port}${script}`, { headers: { 'accept-encoding': 'br' } })
    expect([asset.status, asset.headers.get('content-encoding')]).toEqual([200, 'br'])
    expect(said).toMatch(/Code for the first account +[A-Z0-9]{4}(-[A-Z0-9]{4}){2}\n/)
    expect(said).toMatch(/To connect a tablet +http:\/\/\S+\/connect\n/)
    expect(said).toMatch(/Fingerprint of its certificate +([0-9A-F]{2}:){31}[0-9A-F]{2}\n/)
    const connect = (await (await fetch(`http://127.0.0.1:${port}/connect`)).text()).replaceAll('<wbr>', '')
    expect(connect).toContain(/([0-9A-F]{2}:){31}[0-9A-F]{2}/.exec(said)?.[0])
    // The page has the paper and ink of the app: its style sheets are there.
    for (const [, path] of connect.matchAll(/<link rel="stylesheet" href="([^"]+)"/g)) {
      expect([path, (await fetch(`http://127.0.0.1:${port}${path}`)).status]).toEqual([path, 200])
    }
    expect(connect.match(/<link rel="stylesheet"/g)?.length).toBeGreaterThanOrEqual(2)
    child.kill('SIGTERM')
    await ended
    await expect.poll(() => answers(port), { timeout: 10_000 }).toBe(false)
    // The folder is free again: a command takes its lock.
    await expect
      .poll(() => quietEar(['rebuild', '--data', data]).err, { timeout: 10_000 })
      .toContain('no clinic here yet')
  })
})

describe('start', () => {
  const cli = (args: readonly string[]) => started(process.execPath, ['dist/cli.js', 'start', '--port', '0', ...args])

  it('encrypts with the clinic’s own certificate, and without one only when it is told so', async () => {
    const first = join(folderForTest(), 'first')
    const one = await cli(['--data', first])
    one.child.kill('SIGTERM')
    expect(await one.ended).toBe(0)
    const pem = join(first, 'tls/server.pem')
    const own = await cli(['--data', join(folderForTest(), 'data'), '--certificate', pem, '--key', pem])
    const secure = Number(/https:\/\/\S+:(\d+)/.exec(own.said)?.[1])
    expect(own.said).not.toContain('Fingerprint')
    await new Promise<void>((resolve, reject) => {
      // Trusting exactly the certificate the clinic brought.
      request(
        { port: secure, host: '127.0.0.1', servername: 'localhost', path: '/api/health', rejectUnauthorized: false },
        (response) => {
          response.resume()
          expect(response.statusCode).toBe(200)
          resolve()
        },
      )
        .once('error', reject)
        .end()
    })
    const without = join(folderForTest(), 'data')
    const plain = await cli(['--data', without, '--no-tls', '--host', '127.0.0.1'])
    expect(plain.said).not.toContain('https:')
    expect(existsSync(join(without, 'tls'))).toBe(false)
  })

  it('refuses half a certificate, and one that is none, with a sentence', () => {
    const data = ['--data', join(folderForTest(), 'data')]
    expect(problem(quietEar(['start', ...data, '--certificate', 'x.pem'])).path).toBe('key')
    expect(problem(quietEar(['start', ...data, '--certificate', 'package.json', '--key', 'package.json'])).code).toBe(
      'not-a-certificate',
    )
  })

  it('is backed up while it runs, and restored into a new folder that verifies', async () => {
    const folder = folderForTest()
    const [data, backups, restored] = ['data', 'backups', 'restored'].map((name) => join(folder, name)) as [
      string,
      string,
      string,
    ]
    quietEar(['demo', '--case', 'spaniel', '--out', join(folder, 'tansy.jsonl')])
    const imported = quietEar(['import', join(folder, 'tansy.jsonl'), '--data', data]).err
    const entries = Number(/(\d+) entries/.exec(imported)?.[1])
    expect(entries).toBeGreaterThan(100)
    const { child, ended } = await cli(['--data', data, '--no-tls'])
    // Other commands are turned away while the server has the folder; a backup only reads.
    expect(problem(quietEar(['verify', '--data', data])).code).toBe('store-in-use')
    const made = quietEar(['backup', '--data', data, '--to', backups, '--json'])
    expect(made.status).toBe(0)
    const about = made.json() as { folder: string; clinics: unknown }
    expect(about.clinics).toEqual([{ clinic: 'larkwater', entries }])
    child.kill('SIGTERM')
    expect(await ended).toBe(0)
    expect(quietEar(['restore', about.folder, '--check']).out).toContain(`${entries} entries, every chain verifies`)
    expect(quietEar(['restore', about.folder, '--data', restored]).err).toContain(`${entries} entries`)
    expect(quietEar(['verify', '--data', restored]).out).toBe(`Every chain verifies: ${entries} entries.\n`)
    const again = quietEar(['restore', about.folder, '--data', restored])
    expect([again.status, problem(again).code]).toEqual([2, 'store-not-empty'])
    const broken = quietEar(['restore', backups, '--check'])
    expect([broken.status, broken.err]).toEqual([3, expect.stringContaining('is not a backup')])
    expect(readdirSync(backups)).toHaveLength(2)
  })
})
