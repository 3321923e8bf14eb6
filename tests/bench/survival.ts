import { createReadStream } from 'node:fs'
import { survival } from '#actions/survival/survival.ts'
import { kaplanMeier } from '#core/stats/survival/kaplan-meier.ts'
import { endTimesOf, type Followed, lifeTable } from '#core/stats/survival/life-table.ts'
import { logRank } from '#core/stats/survival/log-rank.ts'
import { readRows } from '../../src/cli/read-rows.ts'

/** Rows of a table that the other side of the comparison reads too: days with ties, a third of them with the event. */
export function* followedLines(rows: number): Generator<string> {
  yield 'time,status,group\n'
  let seed = 20261130
  const chance = () => {
    // Park and Miller's generator: the same rows on every machine.
    seed = (seed * 48271) % 2147483647
    return seed / 2147483647
  }
  for (let i = 0; i < rows; i += 1) {
    const time = Math.ceil(-Math.log(chance()) * 400)
    yield `${time},${chance() < 0.35 ? 1 : 0},${chance() < 0.5 ? 'a' : 'b'}\n`
  }
}

/** Median processor time of the fit and of the test, rows already in memory; then once with the reading of the table. */
export async function benchSurvival(file: string, rounds: number) {
  const groups = new Map<string, Followed[]>()
  let last = ''
  for await (const piece of createReadStream(file, { encoding: 'utf8' })) {
    const lines = (last + piece).split('\n')
    last = lines.pop() ?? ''
    for (const line of lines) {
      const [time = '', status = '', group = ''] = line.split(',')
      if (time === 'time') continue
      const rows = groups.get(group) ?? []
      groups.set(group, rows)
      rows.push({ time: Number(time), status: Number(status) as 0 | 1 })
    }
  }
  const columns = [...groups.values()].map(endTimesOf)
  const all = endTimesOf([...groups.values()].flat())
  groups.clear()
  const fit = median(rounds, () => {
    const table = lifeTable(all)
    if (table.kind === 'refusal') throw new Error(table.refusal.because)
    return kaplanMeier(table.answer).survival.at(-1)
  })
  const test = median(rounds, () => {
    const found = logRank([columns])
    if (found.kind === 'refusal') throw new Error(found.refusal.because)
    return found.answer.chiSquare
  })
  const began = performance.now()
  const answer = await survival(readRows(file), {})
  return {
    fit: fit.ms,
    survival: fit.value,
    test: test.ms,
    chiSquare: test.value,
    whole: performance.now() - began,
    groups: answer.groups.length,
    megabytes: process.resourceUsage().maxRSS / 1024,
  }
}

function median<Value>(rounds: number, run: () => Value): { readonly ms: number; readonly value: Value } {
  let value = run()
  const times = Array.from({ length: rounds }, () => {
    const began = process.cpuUsage()
    value = run()
    const { user, system } = process.cpuUsage(began)
    return (user + system) / 1000
  }).sort((a, b) => a - b)
  return { ms: times[Math.floor(rounds / 2)] ?? 0, value }
}
