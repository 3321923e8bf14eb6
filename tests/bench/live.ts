import { House } from '#server/house-for-tests.ts'
import { skipPostgres, startPostgres } from '#storage/postgres/for-tests.ts'

export type LiveFigures = { readonly median: number; readonly p95: number; readonly most: number }

/** Milliseconds from sending an entry to hearing of it on another screen, through two connections to a real server. */
async function figures(rounds: number, options: { readonly databaseUrl?: string }): Promise<LiveFigures> {
  const house = await House.open(options)
  const hangUp = new AbortController()
  try {
    const headers = { cookie: house.manager.cookie ?? '' }
    const response = await fetch(`${house.serving.url}/api/live`, { headers, signal: hangUp.signal })
    const reader = response.body?.getReader()
    if (!reader) throw new Error('The server lets nobody listen.')
    await reader.read()
    const make = house.maker(house.managerId)
    const times: number[] = []
    for (let round = -5; round < rounds; round += 1) {
      const began = performance.now()
      const sent = house.manager.send([make({ stream: `case:${round}` })], house.clinic)
      await reader.read()
      if (round >= 0) times.push(performance.now() - began)
      await sent
    }
    times.sort((a, b) => a - b)
    const at = (share: number) => times[Math.min(times.length - 1, Math.ceil(times.length * share) - 1)] ?? 0
    return { median: at(0.5), p95: at(0.95), most: at(1) }
  } finally {
    hangUp.abort()
    await house.close()
  }
}

export function benchLiveOnSqlite(rounds = 100): Promise<LiveFigures> {
  return figures(rounds, {})
}

/** Undefined when PostgreSQL was left out on purpose. */
export async function benchLiveOnPostgres(rounds = 100): Promise<LiveFigures | undefined> {
  if (skipPostgres) return undefined
  const server = await startPostgres()
  try {
    return await figures(rounds, { databaseUrl: await server.newDatabase() })
  } finally {
    await server.stop()
  }
}
