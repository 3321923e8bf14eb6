/**
 * Makes a fresh clone ready: installs the packages of the lock file when they are missing or out of date, and bundles
 * the program. Uses nothing but Node and npm.
 */
import { spawnSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { oneAtATime } from './one-at-a-time.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))

/** Exits with one sentence when this Node is too old to run the program. */
function needNode() {
  const [major, minor] = process.versions.node.split('.').map(Number)
  if (major > 20 || (major === 20 && minor >= 19)) return
  console.error(
    `Quiet Ear needs Node.js 20.19 or newer; this is ${process.versions.node}. Install a newer Node.js and try again.`,
  )
  process.exit(1)
}

function installed() {
  const mark = join(root, 'node_modules/.quiet-ear-lock')
  const sum = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex')
  return { mark, sum, ok: existsSync(mark) && readFileSync(mark, 'utf8') === sum }
}

const inTurn = (doing) =>
  oneAtATime(root, () => console.error('Another start makes this folder ready; waiting until it has …'), doing)

/** Installs the packages of the lock file when they are missing or out of date; exits with a sentence when it cannot. */
export async function installPackages() {
  needNode()
  // Whoever waited finds them there.
  if (!installed().ok) await inTurn(() => installed().ok || install())
}

function install() {
  const state = installed()
  console.error('Installing the packages of package-lock.json (npm ci), once …')
  const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm'
  const run = spawnSync(npm, ['ci', '--no-audit', '--no-fund', '--loglevel=error'], {
    cwd: root,
    stdio: ['ignore', 2, 2],
  })
  if (run.status !== 0) {
    console.error(
      'npm ci did not finish. Check the network or the npm registry setting, then run the same command again.',
    )
    process.exit(1)
  }
  writeFileSync(state.mark, state.sum)
}

export async function ready() {
  await installPackages()
  const { build, isBuilt } = await import('./build.mjs')
  if (isBuilt()) return
  await inTurn(async () => {
    if (isBuilt()) return
    console.error('Building …')
    await build()
  })
}

if (process.argv[1] === fileURLToPath(import.meta.url)) await ready()
