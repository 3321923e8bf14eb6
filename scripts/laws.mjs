/**
 * `npm run laws [-- PLANS [SEED]]`: holds random dose plans (a million when no number is given) against the laws of
 * tests/laws, on every processor. Ends with 1 and the smallest plan that breaks a law; the seed makes the same plans again.
 */
import { availableParallelism } from 'node:os'
import { pathToFileURL } from 'node:url'
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads'
import { buildEntry } from './build-entry.mjs'
import { installPackages } from './ready.mjs'

if (isMainThread) await hold()
else await work()

/** One processor's share. Its seeds lie far from those of the others. */
async function work() {
  const { file, plans, seed } = workerData
  const { runLaws } = await import(file)
  const broken = runLaws(plans, seed, (many) => parentPort.postMessage({ many }))
  parentPort.postMessage({ broken: broken ?? null })
}

async function hold() {
  const [plans, seed] = [wholeNumber(process.argv[2], 1_000_000), wholeNumber(process.argv[3], Date.now() % 1e9)]
  installPackages()
  const file = pathToFileURL(await buildEntry('tests/laws/run-laws.ts', 'laws')).href
  const processors = Math.min(availableParallelism(), Math.ceil(plans / 2000))
  const began = performance.now()
  let done = 0
  const share = (place) => Math.floor(((place + 1) * plans) / processors) - Math.floor((place * plans) / processors)
  const workers = Array.from({ length: processors }, (_, place) =>
    finished({ file, plans: share(place), seed: seed + place * 1_000_000_000 }, (many) => {
      done += many
      show(done, plans, began)
    }),
  )
  const broken = (await Promise.all(workers)).find(Boolean)
  if (process.stderr.isTTY) process.stderr.write('\n')
  const seconds = ((performance.now() - began) / 1000).toFixed(0)
  if (broken) {
    console.error(`A law is broken (npm run laws -- 2000 ${broken.seed} makes these plans again):\n${broken.sentence}`)
    process.exitCode = 1
  } else console.log(`laws: ${done} random plans hold every law, ${seconds} s, seed ${seed}`)
}

function finished(data, progress) {
  return new Promise((done, fail) => {
    const worker = new Worker(new URL(import.meta.url), { workerData: data })
    worker.on('message', ({ many, broken }) => (many === undefined ? done(broken) : progress(many)))
    worker.on('error', fail)
  })
}

/** On a terminal one line that grows; elsewhere nothing until the end. */
function show(done, plans, began) {
  if (!process.stderr.isTTY) return
  const rest = ((performance.now() - began) / done) * (plans - done)
  process.stderr.write(`\r${done} of ${plans} plans, about ${Math.ceil(rest / 1000)} s to go `)
}

function wholeNumber(text, otherwise) {
  if (text === undefined) return otherwise
  if (!/^\d{1,10}$/.test(text) || Number(text) < 1) {
    console.error(`"${text}" is no whole number above 0. Write: npm run laws -- PLANS [SEED]`)
    process.exit(2)
  }
  return Number(text)
}
