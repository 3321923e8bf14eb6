import { antibiogram as answerOf } from '#actions/antibiogram/antibiogram.ts'
import { InputError } from '#actions/input.ts'
import { antibiogramSheet } from '#documents/what-grows/antibiogram-sheet.ts'
import { antibiogramText } from '../antibiogram-text.ts'
import type { CommandFile } from '../command.ts'
import { readRows } from '../read-rows.ts'

type Options = { readonly json?: true; readonly csv?: true } & Readonly<Record<string, string | true | undefined>>

export const antibiogram: CommandFile = {
  name: 'antibiogram',
  add: (program, world) => {
    program
      .command('antibiogram')
      .description(
        'what grows: rows of animal, collectedOn, host, organism, drug, mic|zone|category, purpose (site, isolate, disk, status) in',
      )
      .argument('<input>', 'a table (CSV, or JSON objects), or - for standard input')
      .option('--method <method>', 'calendar-year, episode or phenotype')
      .option('--episode-days <days>', 'length of an episode')
      .option('--points <points>', 'threshold of the phenotype method')
      .option('--when <when>', 'whether the points have exceeded or reached it')
      .option('--from <day>', 'first day of sampling that counts')
      .option('--until <day>', 'last day of sampling that counts')
      .option('--minimum <isolates>', 'tell no share of fewer')
      .option('--edition <edition>', 'breakpoints, by id or name')
      .option('--sites <sites>', 'places of sampling together, apart, or each with its own first isolates')
      .option('--json', 'one JSON document on standard output')
      .option('--csv', 'a table for a spreadsheet')
      .action(async (input: string, { json, csv, ...options }: Options) => {
        const answer = await answerOf(readRows(input), asked(options))
        world.out(json ? `${JSON.stringify(answer)}\n` : csv ? antibiogramSheet(answer) : antibiogramText(answer))
      })
  },
}

const numbers = new Set(['episodeDays', 'points', 'minimum'])

/** What is written on a command line is text; what must be a number is read here and judged by the action. */
function asked(options: Readonly<Record<string, string | true | undefined>>): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(options).map(([name, text]) => {
      if (!numbers.has(name)) return [name, text]
      const value = Number(text)
      if (text === '' || !Number.isFinite(value))
        throw new InputError('wrong-value', name, `${name}: ${JSON.stringify(text)} is no number.`)
      return [name, value]
    }),
  )
}
