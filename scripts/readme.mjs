/**
 * The worked case of the README is real output: every `$ …` line of its console blocks is run in a clean folder with
 * the bundled program, and what it prints is written beneath it. `--check` writes nothing and fails when it differs.
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { ready } from './ready.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const path = join(root, 'README.md')
await ready()

const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-readme-'))
// The bundle itself, not the script that would build it anew: what that says is no part of the case.
writeFileSync(join(folder, 'quiet-ear'), `#!/bin/sh\nexec node "${join(root, 'dist/cli.js')}" "$@"\n`, { mode: 0o755 })

/** One console block, with its commands run again one after the other. */
function runAgain(block) {
  const commands = block.split('\n').filter((line) => line.startsWith('$ '))
  return commands
    .map((command) => {
      const run = spawnSync('bash', ['-c', `${command.slice(2)} 2>&1`], { cwd: folder, encoding: 'utf8' })
      if (run.status === null) throw new Error(`"${command}" did not end.`)
      return `${command}\n${run.stdout}`
    })
    .join('')
}

const before = readFileSync(path, 'utf8')
const after = before.replaceAll(/(?<=```console\n)(.*?)(?=```)/gs, (block) => runAgain(block))
rmSync(folder, { recursive: true })
if (before === after) console.log('README.md: the worked case is true.')
else if (process.argv.includes('--check')) {
  console.error(
    'README.md: the worked case prints something else now; run node scripts/readme.mjs and read the difference.',
  )
  process.exitCode = 1
} else {
  writeFileSync(path, after)
  console.log('README.md: the worked case was written anew.')
}
