/**
 * What must never stand in this repository: a path of somebody's machine, the host of a package registry, a key.
 * `--root FOLDER` checks another tree.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { repositoryFiles } from './repository-files.mjs'

const at = process.argv.indexOf('--root')
const root = at > 0 ? process.argv[at + 1] : fileURLToPath(new URL('..', import.meta.url)).replace(/\/$/, '')

/** Written in pieces, so that this file does not break its own rule. */
const forbidden = [
  ['a path of one machine', new RegExp(`(?<![\\w.#-])/${'(work|home|root|Users|tmp)'}/\\w`)],
  ['a path of one machine', new RegExp(`\\b[A-Z]:${'\\\\'}(Users|Temp)`)],
  ['a name of one workplace', new RegExp(`\\b${'farm'}-(?!animal)`)],
  ['the host of a package registry', new RegExp(`\\b${'registry'}\\.[a-z]+\\.[a-z]+|${'npm'}\\.pkg\\.`)],
  ['the host of a package registry', /"resolved": "https?:/],
  ['a private key', new RegExp(`-----${'BEGIN'} [A-Z ]*PRIVATE KEY`)],
]
const notText = /\.(png|jpe?g|webp|pdf|ttf|otf|woff2?|db|sqlite|gz|zip)$/i

const files = repositoryFiles(root).filter((path) => !notText.test(path))
let found = 0
for (const path of files) {
  const lines = readFileSync(join(root, path), 'utf8').split('\n')
  lines.forEach((line, index) => {
    for (const [what, pattern] of forbidden) {
      const hit = pattern.exec(line)
      if (!hit) continue
      found += 1
      console.error(`${path}:${index + 1} holds ${what}: ${hit[0]}`)
    }
  })
}
console.log(`${files.length} files read, ${found} forbidden words`)
process.exitCode = found > 0 || files.length === 0 ? 1 : 0
