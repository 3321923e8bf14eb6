/**
 * Pooling and prior beside R on the same invented studies, in one run. Used by scripts/bench.mjs; alone:
 * `node scripts/bench-evidence.mjs`. Processor time on both sides. Without R only our own times are printed.
 */
import { spawnSync } from 'node:child_process'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { buildEntry } from './build-entry.mjs'

const program = fileURLToPath(new URL('bench-evidence.R', import.meta.url))
/** How near an answer must be to count as the same accuracy: the published target of the binomial-normal fit. */
const sameAccuracy = 1e-6

export async function benchEvidence(sizes = [10, 100, 1000]) {
  const { benchEvidence: ours, benchOddsOfACase } = await import(
    pathToFileURL(await buildEntry('tests/bench/evidence.ts', 'bench-evidence')).href
  )
  const lines = [
    'evidence, processor time, one core',
    `all odds of a case (12 outcomes, prior, own results added, said): ${ms(benchOddsOfACase())}`,
  ]
  const hasR = spawnSync('Rscript', ['--version']).status === 0
  if (!hasR) lines.push('R is not on this machine: only our own times')
  for (const size of sizes) {
    const own = ours(size)
    const there = hasR ? inR(own) : undefined
    lines.push(...compared(`pooling ${size} studies`, own.pooling, there?.pooling, ['mu', 'tau']))
    lines.push(...compared(`prior from ${size} studies`, own.prior, there?.prior, ['mean', 'logMarginal']))
    if (there && size === sizes[0])
      lines.splice(
        1,
        0,
        `${there.r}; metafor ${there.packages.metafor ?? 'none'}, lme4 ${there.packages.lme4 ?? 'none'}`,
      )
  }
  return lines
}

/** R's answers for one set of studies; an R that fails says why and is left out. */
function inR({ studies, plan }) {
  const run = spawnSync('Rscript', ['--vanilla', program], {
    input: JSON.stringify({ studies, plan, limitSeconds: 60 }),
    encoding: 'utf8',
    maxBuffer: 1 << 24,
  })
  if (run.status === 0) return JSON.parse(run.stdout)
  console.error(`R did not answer: ${run.stderr.trim().split('\n').at(-1)}`)
  return undefined
}

/** Our time, each R route with its time and how far its answer is from ours, and the fastest of those that agree. */
function compared(what, own, routes, fields) {
  const lines = [`${what}: ${ms(own.ms)}`]
  let fastest
  for (const [route, answer] of Object.entries(routes ?? {})) {
    if (answer.ms === null) {
      lines.push(`  ${route}: no answer within a minute`)
      continue
    }
    const off = Math.max(
      ...fields.filter((field) => answer[field] !== null).map((field) => Math.abs(answer[field] - own[field])),
    )
    lines.push(
      `  ${route}: ${ms(answer.ms)}, ${(answer.ms / own.ms).toFixed(0)} × ours; answers differ by ${off.toExponential(1)}`,
    )
    if (off <= sameAccuracy && !(answer.ms >= fastest)) fastest = answer.ms
  }
  if (fastest !== undefined)
    lines.push(
      `  fastest R route to the same accuracy (${sameAccuracy}): ${(fastest / own.ms).toFixed(1)} × ours (target 10)`,
    )
  return lines
}

const ms = (value) => `${value < 10 ? value.toFixed(2) : value.toFixed(0)} ms`

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  for (const line of await benchEvidence()) console.log(line)
}
