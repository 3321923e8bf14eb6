import { afterAll, beforeAll, describe } from 'vitest'
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
})
