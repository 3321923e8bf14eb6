/**
 * The import rule of .dependency-cruiser.cjs. A cruiser that reads no module finds no violation, so the number of
 * modules it read must equal the number of TypeScript files under src.
 * `--root FOLDER` checks another tree with the configuration that lies there.
 */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { sourcesUnder } from './check-purity.mjs'

const home = fileURLToPath(new URL('..', import.meta.url)).replace(/\/$/, '')
const at = process.argv.indexOf('--root')
const root = at > 0 ? process.argv[at + 1] : home

const cruiser = join(home, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs')
const run = spawnSync(
  process.execPath,
  [cruiser, 'src', '--config', '.dependency-cruiser.cjs', '--output-type', 'json'],
  { cwd: root, encoding: 'utf8', maxBuffer: 1 << 28 },
)
let result
try {
  result = JSON.parse(run.stdout)
} catch {
  console.error(run.stderr || 'dependency-cruiser said nothing.')
  process.exit(1)
}

const files = sourcesUnder(root, 'src').length
const modules = result.modules.filter(({ source }) => /^src\/.*\.tsx?$/.test(source)).length
const { violations } = result.summary
const adviceOf = new Map(result.summary.ruleSetUsed.forbidden.map(({ name, comment }) => [name, comment]))
for (const { rule, from, to, cycle } of violations) {
  const ring = cycle ? ` (${cycle.map(({ name }) => name).join(' → ')})` : ''
  const comment = adviceOf.get(rule.name)
  console.error(`${rule.name}: ${from} → ${to}${ring}${comment && comment !== '-' ? ` – ${comment}` : ''}`)
}
if (modules !== files || files === 0) {
  console.error(`The cruiser read ${modules} modules, but src holds ${files} TypeScript files.`)
}
console.log(`${modules} modules of ${files} files, ${violations.length} violations`)
process.exitCode = violations.length > 0 || modules !== files || files === 0 ? 1 : 0
