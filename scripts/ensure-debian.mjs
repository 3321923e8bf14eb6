/**
 * Installs Debian packages that a test needs, when this machine lets us: `node scripts/ensure-debian.mjs postgresql`.
 * Says on standard error what it does. Ends with 1 and one sentence when it cannot.
 */
import { execFileSync, spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { pathToFileURL } from 'node:url'

/** Makes sure that the packages are there. Returns those it installed; throws one sentence when it cannot. */
export function ensureDebian(packages) {
  const missing = packages.filter((name) => !isInstalled(name))
  if (missing.length === 0) return []
  const list = missing.join(' ')
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) {
    throw new Error(`These tests need ${list}: install with "sudo apt-get install -y --no-install-recommends ${list}".`)
  }
  console.error(`Installing for the tests (Debian): ${list}`)
  // The package would start a server of its own at once; the tests start theirs and leave nothing running.
  if (missing.includes('postgresql')) startNoServer()
  const apt = (...words) =>
    execFileSync('apt-get', words, {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    })
  try {
    apt('update', '-q')
    apt('install', '-y', '-q', '--no-install-recommends', '-o', 'Dpkg::Options::=--force-confold', ...missing)
  } catch (error) {
    throw new Error(`The packages ${list} could not be installed (no network?). Install them, then run again.`, {
      cause: error,
    })
  }
  return missing
}

function isInstalled(name) {
  const asked = spawnSync('dpkg', ['-s', name], { encoding: 'utf8' })
  return asked.status === 0 && asked.stdout.includes('Status: install ok installed')
}

function startNoServer() {
  const file = '/etc/postgresql-common/createcluster.conf'
  if (existsSync(file)) return
  mkdirSync('/etc/postgresql-common', { recursive: true })
  writeFileSync(file, 'create_main_cluster = false\n')
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  try {
    ensureDebian(process.argv.slice(2))
  } catch (error) {
    console.error(error.message)
    process.exitCode = 1
  }
}
