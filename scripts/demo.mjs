/**
 * `npm run demo`: makes the clone ready, writes the two invented cases, makes every paper they have reached, and lists
 * the papers. Everything goes to the folder `out`.
 */
import { spawnSync } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { ready } from './ready.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
await ready()

function quietEar(...args) {
  const run = spawnSync(process.execPath, [join(root, 'dist/cli.js'), ...args], { cwd: root, encoding: 'utf8' })
  if (run.status === 0) return run.stdout
  process.stderr.write(run.stderr)
  process.exit(run.status ?? 1)
}

mkdirSync(join(root, 'out'), { recursive: true })
for (const { name, title } of JSON.parse(quietEar('demo', '--list', '--json'))) {
  const file = join('out', `${name}.jsonl`)
  quietEar('demo', '--case', name, '--out', file)
  console.log(`\n${title}`)
  process.stdout.write(quietEar('pack', file, '--out', join('out', name)))
}
console.log(`\nThe papers are in ${join(root, 'out')}. Next: README.md, "One case".`)
