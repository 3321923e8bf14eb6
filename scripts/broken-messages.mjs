/**
 * `node scripts/broken-messages.mjs [COUNT [SEED]]`: spoils that many laboratory messages and tables (a hundred thousand
 * when no number is given) and reads them; each must be read whole or refused whole. Ends with 1 and the first that is not.
 */
import { pathToFileURL } from 'node:url'
import { buildEntry } from './build-entry.mjs'
import { installPackages } from './ready.mjs'

const [count, seed] = [Number(process.argv[2] ?? 100_000), Number(process.argv[3] ?? Date.now() % 1e9)]
installPackages()
const { breakMessages } = await import(
  pathToFileURL(await buildEntry('tests/laws/broken-messages.ts', 'broken-messages')).href
)
const began = performance.now()
const broken = breakMessages(count, seed)
const seconds = ((performance.now() - began) / 1000).toFixed(0)
if (broken) {
  console.error(`${broken.why} (seed ${seed}):\n${JSON.stringify(broken.text)}`)
  process.exitCode = 1
} else console.log(`messages: ${count} spoilt ones were read whole or refused whole, ${seconds} s, seed ${seed}`)
