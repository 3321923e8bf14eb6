import { StoreError } from '#actions/store.ts'
import { endOnSignals, serve } from '#server/serve.ts'
import { projectForTests } from '#storage/projector-for-tests.ts'

/** The real server as a process of its own: `node main.js FOLDER-OR-DATABASE [BYTES-TO-LEAVE-FREE]`. Prints its address, and the one-time code while there is no account. */
const [place = '', leaveFree] = process.argv.slice(2)
const where = place.startsWith('postgresql:') ? { databaseUrl: place } : { dataDir: place }
const options = leaveFree === undefined ? {} : { leaveFreeBytes: Number(leaveFree) }
try {
  const serving = await serve({ ...where, ...options, port: 0, project: projectForTests })
  endOnSignals(serving)
  process.stdout.write(`${serving.url} ${serving.firstCode ?? ''}\n`)
} catch (error) {
  if (!(error instanceof StoreError)) throw error
  process.stderr.write(`${error.message}\n`)
  process.exitCode = 2
}
