import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { storeContract } from '../contract.ts'
import { projectForTests } from '../projector-for-tests.ts'
import { openLockedFolder } from './open.ts'

storeContract('the embedded store', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-'))
  const store = await openLockedFolder(folder, { project: projectForTests })
  return {
    connect: async () => store,
    stop: async () => rmSync(folder, { recursive: true, force: true }),
  }
})
