import { InputError } from '#actions/input.ts'
import { type DemoName, demoCases, demoFile } from '#demo/index.ts'
import type { CommandFile } from '../command.ts'
import { table } from '../table.ts'
import { writeOutput } from '../write-output.ts'

type Options = { readonly case?: string; readonly out?: string; readonly list?: boolean; readonly json?: boolean }

export const demo: CommandFile = {
  name: 'demo',
  add: (program, world) => {
    program
      .command('demo')
      .description('write a case of the invented practice as a case file')
      .option('--case <name>', 'which case; every case when none is named')
      .option('--out <file>', 'where to write it; standard output when none is named')
      .option('--list', 'the names of the cases')
      .option('--json', 'the list as JSON')
      .action((options: Options) => {
        if (options.list) {
          world.out(listed(options.json ?? false))
          return
        }
        const text = demoFile(namesOf(options.case))
        if (options.out === undefined) {
          world.out(text)
          return
        }
        writeOutput(options.out, text)
        world.err(`Wrote ${options.out}, ${text.split('\n').length - 1} lines.\n`)
      })
  },
}

function namesOf(name: string | undefined): DemoName[] {
  const names = demoCases.map((one) => one.name)
  if (name === undefined) return names
  const found = names.find((one) => one === name)
  if (!found)
    throw new InputError('unknown-case', 'case', `There is no demo case "${name}"; there are ${names.join(' and ')}.`)
  return [found]
}

function listed(json: boolean): string {
  const list = demoCases.map(({ name, title }) => ({ name, title }))
  return json
    ? `${JSON.stringify(list)}\n`
    : table(
        ['name', 'what'],
        list.map(({ name, title }) => [name, title]),
      )
}
