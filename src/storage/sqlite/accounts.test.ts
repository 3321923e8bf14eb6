import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { accountsContract } from '../accounts-contract.ts'
import { projectForTests } from '../projector-for-tests.ts'
import { openLockedFolder } from './open.ts'

accountsContract('the accounts in the embedded store', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'quiet-ear-'))
  const open = () => openLockedFolder(folder, { project: projectForTests })
  const store = await open()
  return {
    connect: async () => store,
    reopen: async () => {
      await store.close()
      return open()
    },
    stop: async () => rmSync(folder, { recursive: true, force: true }),
  }
})
