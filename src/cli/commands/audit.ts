import { type AuditAnswer, audit as answerOf, auditList } from '#actions/audit/audit.ts'
import { InputError } from '#actions/input.ts'
import { caution } from '#content/wording/caution.ts'
import type { CommandFile } from '../command.ts'
import { readJson } from '../read-input.ts'
import { table } from '../table.ts'

export const audit: CommandFile = {
  name: 'audit',
  add: (program, world) => {
    program
      .command('audit')
      .description('one calculation of an audit: {"op":"…", fields} in, {"op","method","answer"} out')
      .argument('[input]', 'a JSON file, or - for standard input')
      .option('--list', 'every calculation with what it takes')
      .option('--json', 'one JSON document on standard output')
      .action(async (input: string | undefined, options: { list?: boolean; json?: boolean }) => {
        if (options.list) {
          world.out(options.json ? `${JSON.stringify(auditList())}\n` : listed())
          return
        }
        if (input === undefined)
          throw new InputError('input-missing', 'input', 'Name a JSON file, or - for standard input, or --list.')
        const answer = answerOf(await readJson(input))
        world.out(options.json ? `${JSON.stringify(answer)}\n` : told(answer))
      })
  },
}

function listed(): string {
  const rows = auditList().flatMap(({ op, sentence, fields }) => [
    [op, '', sentence],
    ...fields.map(({ name, optional, says }) => ['', optional ? `[${name}]` : name, says]),
  ])
  return table(['calculation', 'takes', 'what it is'], rows)
}

function told({ sentence, method, answer }: AuditAnswer): string {
  return `${sentence}\n${table(['what', 'value'], lines(answer, ''))}${method}\n${caution}\n`
}

/** Each number by the way to it: `wilson`, `groups[0].share`. */
function lines(value: unknown, path: string): string[][] {
  if (Array.isArray(value)) {
    const plain = value.every((one) => typeof one !== 'object' || one === null)
    return plain ? [[path, value.map(said).join(' – ')]] : value.flatMap((one, i) => lines(one, `${path}[${i}]`))
  }
  if (typeof value !== 'object' || value === null) return [[path, said(value)]]
  return Object.entries(value).flatMap(([name, one]) => lines(one, path === '' ? name : `${path}.${name}`))
}

function said(value: unknown): string {
  return typeof value === 'number' && !Number.isInteger(value)
    ? value.toPrecision(6)
    : value === null
      ? '–'
      : String(value)
}
