import { createRequire } from 'node:module'
import { Worker } from 'node:worker_threads'

/**
 * Copies an open data file into a new one, as it stood at one moment, while others go on writing. In a thread of its
 * own: a copy of years takes seconds, and nobody at a tablet waits for it. The connection never folds the log into the
 * file (the server's does), it only reads.
 */
export function copyDatabase(from: string, to: string): Promise<void> {
  const driver = createRequire(import.meta.url).resolve('libsql')
  const worker = new Worker(work, { eval: true, workerData: { driver, from, to } })
  return new Promise((resolve, reject) => {
    worker.once('error', reject)
    worker.once('exit', (code) => (code === 0 ? resolve() : reject(new Error(`The copy ended with ${code}.`))))
  })
}

const work = `
const { workerData } = require('node:worker_threads')
const Database = require(workerData.driver)
const database = new Database(workerData.from)
for (const pragma of ['busy_timeout = 5000', 'wal_autocheckpoint = 0']) database.prepare('PRAGMA ' + pragma).all()
database.prepare('VACUUM INTO ?').run(workerData.to)
database.close()
`
