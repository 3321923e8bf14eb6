import { calc as answerOf, calcList } from '#actions/dosing/calc.ts'
import { InputError } from '#actions/input.ts'
import { caution } from '#content/wording/caution.ts'
import type { CommandFile } from '../command.ts'
import { readJson } from '../read-input.ts'
import { table } from '../table.ts'

export const calc: CommandFile = {
  name: 'calc',
  add: (program, world) => {
    program
      .command('calc')
      .description('one formula: {"op":"…", fields} in, {"value","unit","formula","sources"} out')
      .argument('[input]', 'a JSON file, or - for standard input')
      .option('--list', 'every formula with its fields')
      .option('--json', 'one JSON document on standard output')
      .action(async (input: string | undefined, options: { list?: boolean; json?: boolean }) => {
        if (options.list) {
          world.out(options.json ? `${JSON.stringify(calcList())}\n` : listed())
          return
        }
        if (input === undefined)
          throw new InputError('input-missing', 'input', 'Name a JSON file, or - for standard input, or --list.')
        const answer = answerOf(await readJson(input))
        if (options.json) {
          world.out(`${JSON.stringify(answer)}\n`)
          return
        }
        const value = answer.value === null ? (answer.refusal?.text ?? 'no answer') : `${answer.value} ${answer.unit}`
        const citations = answer.sources.map(
          (source) => `  ${source.citation} (${source.known}, ${source.confidence})\n`,
        )
        world.out(`${answer.op}: ${value}\n${answer.formula}\n${citations.join('')}${caution}\n`)
      })
  },
}

function listed(): string {
  const rows = calcList().map(({ op, fields, sentence }) => [
    op,
    fields.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(' '),
    sentence,
  ])
  return table(['formula', 'fields', 'what it works out'], rows)
}
