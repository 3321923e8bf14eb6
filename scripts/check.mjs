/**
 * `npm run check`: everything that must hold after every change, in at most 90 seconds on two cores.
 * Steps run two at a time, longest first; each prints its seconds, and a failed one prints what it said.
 */
import { spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { installPackages } from './ready.mjs'
import { repositoryFiles } from './repository-files.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const seconds = 90
const lanes = 2
const tool = (path) => join('node_modules', path)

/** Longest first, so that the two lanes end together. */
const steps = [
  ['unit tests', tool('vitest/vitest.mjs'), 'run', '--project', 'unit', '--reporter=dot'],
  ['types', tool('ts7/bin/tsc'), '-p', 'tsconfig.json'],
  ['types of the pure layers', tool('ts7/bin/tsc'), '-p', 'tsconfig.pure.json'],
  ['types of the web', tool('ts7/bin/tsc'), '-p', 'tsconfig.web.json'],
  ['dead code', tool('knip/bin/knip.js'), '--no-progress'],
  ['reference pages', 'scripts/docs.mjs', '--check'],
  ['import rule', 'scripts/check-imports.mjs'],
  ['style', tool('@biomejs/biome/bin/biome'), 'check', '--error-on-warnings', '--colors=off'],
  ['purity', 'scripts/check-purity.mjs'],
  ['links', 'scripts/check-links.mjs'],
  ['forbidden words', 'scripts/check-words.mjs'],
  ['indexes', 'scripts/write-indexes.mjs', '--check'],
]

function runStep([name, ...command]) {
  const began = performance.now()
  return new Promise((done) => {
    const child = spawn(process.execPath, command, {
      cwd: root,
      env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: undefined, CI: '1' },
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    let said = ''
    const hear = (chunk) => {
      said += chunk
    }
    child.stdout.setEncoding('utf8').on('data', hear)
    child.stderr.setEncoding('utf8').on('data', hear)
    child.on('error', (error) => hear(error.message))
    child.on('close', (code) => done({ name, ok: code === 0, said, took: (performance.now() - began) / 1000 }))
  })
}

/** The line of a step that says how much it looked at. */
function essence({ name, said }) {
  const lines = said.split('\n').map((line) => line.trim())
  const wanted = name === 'unit tests' ? /^Tests /u : /\d+ (modules|pure files|pages|files|reference)\b|Checked \d+/u
  return (lines.findLast((line) => wanted.test(line)) ?? '').replaceAll(/\s+/gu, ' ')
}

function report(result) {
  console.log(
    `${result.ok ? 'ok    ' : 'FAILED'} ${result.took.toFixed(1).padStart(5)} s  ${result.name.padEnd(25)} ${essence(result)}`.trimEnd(),
  )
  if (!result.ok) console.log(result.said.trimEnd().replaceAll(/^/gmu, '       | '))
}

async function lane(queue, results) {
  for (let step = queue.shift(); step; step = queue.shift()) {
    const result = await runStep(step)
    results.push(result)
    report(result)
  }
}

/** For the eye only: a large file is looked at, not refused. */
function largestFiles() {
  return repositoryFiles(root)
    .filter((path) => /^(src|tests|scripts)\/.*\.(tsx?|mjs)$/.test(path))
    .map((path) => ({ path, lines: readFileSync(join(root, path), 'utf8').split('\n').length - 1 }))
    .sort((a, b) => b.lines - a.lines || (a.path < b.path ? -1 : 1))
    .slice(0, 10)
}

await installPackages()
const began = performance.now()
const results = []
const queue = [...steps]
await Promise.all(Array.from({ length: lanes }, () => lane(queue, results)))
const took = (performance.now() - began) / 1000

console.log('note          ten largest files (look again over 250 lines outside content):')
for (const { path, lines } of largestFiles()) console.log(`       ${String(lines).padStart(5)} lines  ${path}`)

const failed = results.filter(({ ok }) => !ok).map(({ name }) => name)
const slow = took > seconds ? `, slower than the ${seconds} s it may take` : ''
if (failed.length === 0) console.log(`check: ${results.length} steps hold, ${took.toFixed(1)} s${slow}`)
else
  console.log(
    `check: ${failed.length} of ${results.length} steps failed (${failed.join(', ')}), ${took.toFixed(1)} s${slow}`,
  )
process.exitCode = failed.length > 0 ? 1 : 0
