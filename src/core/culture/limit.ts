import { sameDisk } from './disk.ts'
import { onLadder, rungsOf } from './ladder.ts'
import { readPrinted } from './printed-value.ts'
import type { Row } from './read-drug.ts'
import type { Limit } from './rules.ts'

/**
 * Whether a printed value meets a limit of a test: `open` when only some of what it can mean does, null when it is no
 * number of this test (another drug, method or disk).
 */
export function limitMet(limit: Limit, row: Row): 'met' | 'not-met' | 'open' | null {
  if (row.agent !== limit.agent) return null
  const value = readPrinted(row.raw, row.method)
  const end = Number(limit.value.value)
  if (value.kind === 'mic' && limit.method === 'MIC') {
    const rungs = rungsOf(value.sign, value.amount)
    const place = onLadder(limit.value.value)
    if (!place) throw new Error(`The limit ${limit.value.value} of ${limit.agent} lies on no rung.`)
    const first = limit.sign === '>' ? place.rung + 1 : place.rung
    return rungs && told(rungs.from >= first, rungs.to >= first)
  }
  if (value.kind !== 'zone' || limit.method !== 'DISK') return null
  if (row.disk !== null && limit.disk !== undefined && !sameDisk(row.disk, limit.disk)) return null
  const meets = (width: number) => (limit.sign === '<' ? width < end : width <= end)
  const width = Number(value.millimetres)
  switch (value.sign) {
    case '=':
      return told(meets(width), meets(width))
    case '<=':
    case '<':
      return told(meets(value.sign === '<' ? Math.ceil(width) - 1 : width), true)
    case '>=':
    case '>':
      return told(false, meets(value.sign === '>' ? Math.floor(width) + 1 : width))
  }
}

function told(all: boolean, some: boolean): 'met' | 'not-met' | 'open' {
  return all ? 'met' : some ? 'open' : 'not-met'
}
