import { InputError } from '#actions/input.ts'
import { survival as answerOf } from '#actions/survival/survival.ts'
import type { CommandFile } from '../command.ts'
import { readRows } from '../read-rows.ts'
import { survivalText } from '../survival-text.ts'

type Options = {
  readonly json?: true
  readonly interval?: string
  readonly competing?: true
  readonly horizon?: string
}

export const survival: CommandFile = {
  name: 'survival',
  add: (program, world) => {
    program
      .command('survival')
      .description('time to an event: rows of time, status (0 still followed, 1 event, 2 another end), group in')
      .argument('<input>', 'a table (CSV, or JSON objects), or - for standard input')
      .option('--interval <scale>', 'log-log, log or plain')
      .option('--competing', 'the share with the event where another end can come first')
      .option('--horizon <time>', 'the time until which the mean is taken')
      .option('--json', 'one JSON document on standard output')
      .action(async (input: string, { json, interval, competing, horizon }: Options) => {
        const options = {
          ...(interval !== undefined && { interval }),
          ...(competing && { competing }),
          ...(horizon !== undefined && { horizon: numberIn(horizon) }),
        }
        const answer = await answerOf(readRows(input), options)
        world.out(json ? `${JSON.stringify(answer)}\n` : survivalText(answer))
      })
  },
}

function numberIn(text: string): number {
  const value = Number(text)
  if (text.trim() === '' || !Number.isFinite(value))
    throw new InputError('wrong-value', 'horizon', `horizon: ${JSON.stringify(text)} is no number.`)
  return value
}
