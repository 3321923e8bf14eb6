import { afterAll, beforeAll, describe } from 'vitest'
import { accountsContract } from '../accounts-contract.ts'
import { storeContract } from '../contract.ts'
import { projectForTests } from '../projector-for-tests.ts'
import { type PostgresForTests, skipPostgres, startPostgres } from './for-tests.ts'
import { openPostgres } from './open.ts'

describe.skipIf(skipPostgres)('on PostgreSQL', () => {
  let server: PostgresForTests
  beforeAll(async () => {
    server = await startPostgres()
  })
  afterAll(() => server?.stop())

  storeContract('the store on PostgreSQL', async () => {
    const address = await server.newDatabase()
    return {
      connect: () => openPostgres(address, { project: projectForTests, connections: 4 }),
      stop: async () => undefined,
    }
  })

  accountsContract('the accounts on PostgreSQL', async () => {
    const address = await server.newDatabase()
    const open = () => openPostgres(address, { project: projectForTests, connections: 4 })
    const store = await open()
    return {
      connect: async () => store,
      reopen: async () => {
        await store.close()
        return open()
      },
      stop: async () => undefined,
    }
  })
})
