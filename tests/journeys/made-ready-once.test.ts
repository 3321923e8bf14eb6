import { type ChildProcess, spawn } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'

/** A package that installs in a moment, without a network: npm itself does all it does for the real one. */
const packages = {
  'package.json': JSON.stringify({ name: 'ready', version: '1.0.0', scripts: { preinstall: 'node slow.mjs' } }),
  'package-lock.json': JSON.stringify({
    name: 'ready',
    version: '1.0.0',
    lockfileVersion: 3,
    packages: { '': { name: 'ready', version: '1.0.0', hasInstallScript: true } },
  }),
  'slow.mjs': `import { appendFileSync, mkdirSync } from 'node:fs'
mkdirSync('node_modules', { recursive: true })
appendFileSync('installs.txt', 'begun\\n')
await new Promise((resolve) => setTimeout(resolve, 1500))
appendFileSync('installs.txt', 'ended\\n')
`,
}

describe('making a folder ready', () => {
  let folder: string
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'quiet-ear-ready-'))
    for (const [name, text] of Object.entries(packages)) writeFileSync(join(folder, name), text)
    cpSync('scripts/ready.mjs', join(folder, 'scripts/ready.mjs'))
    cpSync('scripts/one-at-a-time.mjs', join(folder, 'scripts/one-at-a-time.mjs'))
    // Building is another matter: here it is there already.
    mkdirSync(join(folder, 'scripts'), { recursive: true })
    writeFileSync(
      join(folder, 'scripts/build.mjs'),
      'export const isBuilt = () => true\nexport const build = () => {}\n',
    )
  })
  afterEach(() => rmSync(folder, { recursive: true, force: true }))

  const begin = () => spawn(process.execPath, ['scripts/ready.mjs'], { cwd: folder, env: process.env })
  const ended = (child: ChildProcess) => {
    let said = ''
    child.stderr?.setEncoding('utf8').on('data', (chunk: string) => {
      said += chunk
    })
    return new Promise<{ status: number | null; said: string }>((resolve) =>
      child.once('close', (status) => resolve({ status, said })),
    )
  }
  const installs = () => readFileSync(join(folder, 'installs.txt'), 'utf8').trim().split('\n')

  it('installs once when two start at once; the other waits and says so', async () => {
    const both = await Promise.all([ended(begin()), ended(begin())])
    expect(both.map(({ status }) => status)).toEqual([0, 0])
    expect(installs()).toEqual(['begun', 'ended'])
    expect(both.filter(({ said }) => said.includes('Another start makes this folder ready'))).toHaveLength(1)
    expect(existsSync(join(folder, 'node_modules/.quiet-ear-lock'))).toBe(true)
  })

  it('goes on after a start that was killed in the middle', async () => {
    const killed = begin()
    const over = ended(killed)
    while (!existsSync(join(folder, 'installs.txt'))) await new Promise((resolve) => setTimeout(resolve, 50))
    killed.kill('SIGKILL')
    await over
    expect(await ended(begin())).toMatchObject({ status: 0 })
    expect(existsSync(join(folder, 'node_modules/.quiet-ear-lock'))).toBe(true)
  })
})
