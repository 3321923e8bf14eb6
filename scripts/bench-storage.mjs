/** Durable entries per second on both stores. Used by scripts/bench.mjs; alone: `node scripts/bench-storage.mjs`. */
import { pathToFileURL } from 'node:url'
import { buildEntry } from './build-entry.mjs'

/** `{ sqlite, postgres }`, each `{ oneAtATime, batchesOfTwenty }` in entries per second; postgres is undefined when skipped. */
export async function benchStorage() {
  const file = await buildEntry('tests/bench/storage.ts', 'bench-storage')
  const { benchSqlite, benchPostgres } = await import(pathToFileURL(file).href)
  return { sqlite: await benchSqlite(), postgres: await benchPostgres() }
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  for (const [store, figures] of Object.entries(await benchStorage())) {
    if (!figures) console.log(`${store}: skipped`)
    else
      console.log(
        `${store}: ${figures.oneAtATime} entries/s one at a time, ${figures.batchesOfTwenty} in batches of 20`,
      )
  }
}
