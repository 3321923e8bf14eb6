import { readdirSync } from 'node:fs'
import { join } from 'node:path'

/** What is made or fetched, never written by hand. */
const notOurs = new Set(['.git', 'node_modules', 'dist', 'coverage', 'out', '.cache', 'quiet-ear-data'])

/** Every file of the repository that people wrote, sorted, relative to the root. Works without git. */
export function repositoryFiles(root, folder = '') {
  return readdirSync(join(root, folder), { withFileTypes: true })
    .filter((item) => !notOurs.has(item.name) && !item.name.endsWith('.log'))
    .flatMap((item) => {
      const path = folder === '' ? item.name : `${folder}/${item.name}`
      return item.isDirectory() ? repositoryFiles(root, path) : [path]
    })
    .sort()
}
