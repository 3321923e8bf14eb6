/**
 * The power-cut rig: `npm run power-cut [-- ROUNDS]`. Ends with 1 when an acknowledged entry is missing or a chain does
 * not verify; skips, saying so, where root, loop devices or ext4 are missing.
 */
import { pathToFileURL } from 'node:url'
import { buildEntry } from './build-entry.mjs'

const rounds = Number(process.argv[2] ?? 16)
const rigFile = await buildEntry('tests/power-cut/rig.ts', 'power-cut-rig')
const { Rig } = await import(pathToFileURL(rigFile).href)
const missing = Rig.missing()
if (missing) {
  console.error(`SKIPPED: the power-cut rig does not run here, ${missing}.`)
} else {
  const server = await buildEntry('tests/journeys/server-for-tests.ts', 'power-cut-server')
  const reader = await buildEntry('tests/power-cut/read-journal.ts', 'power-cut-reader')
  await cutPower(new Rig({ server, reader }))
}

async function cutPower(rig) {
  try {
    let acknowledged = new Set()
    let name = ''
    let total = 0
    for (let round = 0; round < rounds; round += 1) {
      // Every fourth round is the very first run of a new data folder, half of them cut while it is being made.
      const first = round % 4 === 0
      if (first) {
        acknowledged = new Set()
        name = `clinic-${round}`
      }
      const whileStarting = round % 8 === 4
      rig.mount()
      const delay = whileStarting ? 150 + ((round * 37) % 300) : 60 + ((round * 131) % 900)
      const now = await rig.round(name, round, delay, whileStarting)
      for (const id of now) acknowledged.add(id)
      rig.mount()
      const { ids, broken, listsAgree } = rig.read(name)
      rig.unmount()
      const present = new Set(ids)
      const lost = [...acknowledged].filter((id) => !present.has(id))
      total += now.length
      const when = whileStarting ? 'while it started for the first time' : first ? 'in its first run' : 'while it wrote'
      console.log(
        `cut ${round + 1} after ${delay} ms ${when}: ${now.length} acknowledged, ${ids.length} there, ${lost.length} lost`,
      )
      if (lost.length > 0 || broken || !listsAgree) {
        console.error('BROKEN', JSON.stringify({ lost, broken, listsAgree }))
        process.exitCode = 1
        return
      }
    }
    console.log(`${rounds} power cuts, ${total} entries acknowledged, none lost, every chain verifies.`)
  } finally {
    rig.remove()
  }
}
