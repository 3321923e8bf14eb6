import { type PoolAnswer, pool as pooledFrom } from '#actions/evidence/pool.ts'
import { caution } from '#content/wording/caution.ts'
import { poolTable as words } from '#content/wording/pooling.ts'
import { fill } from '#core/outcome/finding.ts'
import type { CommandFile } from '../command.ts'
import { readJson } from '../read-input.ts'
import { table } from '../table.ts'

export const pool: CommandFile = {
  name: 'pool',
  add: (program, world) => {
    program
      .command('pool')
      .description('published counts pooled: {"studies":[{"id","events","total"}],"method","tau"} in')
      .argument('<input>', 'a JSON file, or - for standard input')
      .option('--json', 'one JSON document on standard output')
      .action(async (input: string, { json }: { readonly json?: boolean }) => {
        const answer = pooledFrom(await readJson(input))
        world.out(json ? `${JSON.stringify(answer)}\n` : told(answer))
      })
  },
}

function told(answer: PoolAnswer): string {
  const studies = answer.studies.map(({ id, events, total, proportion, interval }) => [
    id,
    `${events} of ${total}`,
    percent(proportion),
    between(interval),
  ])
  const pooled = [
    answer.estimate === null ? words.sum : words.pooled,
    '',
    percent(answer.estimate),
    between(answer.interval),
  ]
  const without = answer.leaveOneOut.map((rest) => [
    `${words.without} ${rest.without}`,
    '',
    percent(rest.estimate),
    between(rest.interval),
  ])
  const lines = [
    ...(answer.prediction
      ? [fill(words.prediction, { low: percent(answer.prediction[0]), high: percent(answer.prediction[1]) })]
      : []),
    ...spread(answer),
    ...answer.notes.map(({ text }) => text),
    caution,
  ]
  const header = [words.study, words.counted, words.share, words.interval]
  return `${table(header, [...studies, pooled, ...without])}${lines.map((line) => `${line}\n`).join('')}`
}

function spread({ tau2, i2, q, qDf, qP }: PoolAnswer): string[] {
  if (tau2 === null || i2 === null || q === null || qP === null) return []
  const about = { tau2: tau2.toPrecision(4), i2: percent(i2), q: q.toFixed(2), df: String(qDf), p: qP.toPrecision(2) }
  return [fill(words.spread, about)]
}

function between([low, high]: readonly [number, number]): string {
  return `${percent(low)} – ${percent(high)}`
}

function percent(share: number | null): string {
  return share === null ? words.noPoint : `${(100 * share).toFixed(1)} %`
}
