import { InputError } from '#actions/input.ts'
import { readMoment } from '#core/time/moment.ts'
import { dayInPractice, demoCases, demoFile, livingCases, livingFile, practiceFile } from '#demo/index.ts'
import type { CommandFile, World } from '../command.ts'
import { table } from '../table.ts'
import { writeOutput } from '../write-output.ts'

type Options = {
  readonly case?: string
  readonly live?: boolean
  readonly today?: string
  readonly out?: string
  readonly list?: boolean
  readonly json?: boolean
}

export const demo: CommandFile = {
  name: 'demo',
  add: (program, world) => {
    program
      .command('demo')
      .description('write a case of the invented practice as a case file')
      .option('--case <name>', 'which case; every case when none is named')
      .option('--live', 'the practice as it is opened: besides the finished cases those in the middle of their course')
      .option('--today <day>', 'the day that the living cases are counted from; today when none is named')
      .option('--out <file>', 'where to write it; standard output when none is named')
      .option('--list', 'the names of the cases')
      .option('--json', 'the list as JSON')
      .action((options: Options) => {
        if (options.list) {
          world.out(listed(options.json ?? false))
          return
        }
        const text = textOf(options, world)
        if (options.out === undefined) {
          world.out(text)
          return
        }
        writeOutput(options.out, text)
        world.err(`Wrote ${options.out}, ${text.split('\n').length - 1} lines.\n`)
      })
  },
}

/** A living case is written for a day; a finished one is the same on every day. */
function textOf({ case: name, live = false, today }: Options, world: World): string {
  const living = livingCases.find((one) => one.name === name)
  if (today !== undefined && !live) {
    throw new InputError('wrong-input', 'today', '--today counts the days of living cases: write --live too.')
  }
  if (name === undefined) return live ? practiceFile(dayOf(today, world)) : demoFile(demoCases.map((one) => one.name))
  if (living && live) return livingFile(living.name, dayOf(today, world))
  if (living) throw new InputError('wrong-input', 'case', `"${name}" is in the middle of its course: write --live too.`)
  const found = demoCases.find((one) => one.name === name)
  if (found) return demoFile([found.name])
  const names = [...demoCases, ...livingCases].map((one) => one.name).join(', ')
  throw new InputError('unknown-case', 'case', `There is no demo case "${name}"; there are ${names}.`)
}

function dayOf(given: string | undefined, { now }: World): string {
  if (given === undefined) return dayInPractice(now())
  const moment = readMoment(given, 'UTC')
  if ('because' in moment || moment.precision !== 'day' || moment.at < '2025-07') {
    const message = `today: "${given}" is no day of the invented practice; write a day from July 2025 on, like 2026-03-10.`
    throw new InputError('wrong-date', 'today', message)
  }
  return moment.at.slice(0, 10)
}

function listed(json: boolean): string {
  const list = [
    ...demoCases.map(({ name, title }) => ({ name, title, course: 'finished' })),
    ...livingCases.map(({ name, title }) => ({ name, title, course: 'living' })),
  ]
  return json
    ? `${JSON.stringify(list)}\n`
    : table(
        ['name', 'course', 'what'],
        list.map(({ name, title, course }) => [name, course, title]),
      )
}
