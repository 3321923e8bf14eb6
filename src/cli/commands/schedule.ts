import { type ScheduleAnswer, scheduleCalendar, schedule as workedOut } from '#actions/home/schedule.ts'
import type { CommandFile } from '../command.ts'
import { readJson } from '../read-input.ts'
import { table } from '../table.ts'
import { writeOutput } from '../write-output.ts'

type Options = { readonly json?: boolean; readonly full?: boolean; readonly ics?: string }

export const schedule: CommandFile = {
  name: 'schedule',
  add: (program, world) => {
    program
      .command('schedule')
      .description('what falls due after an operation, for a year')
      .argument('<input>', 'a JSON file, or - for standard input')
      .option('--ics <file>', 'write the calendar file')
      .option('--json', 'the owed items as one JSON array on standard output')
      .option('--full', 'with --json: also medicines, what is closed and what was noticed, as one JSON object')
      .action(async (input: string, options: Options) => {
        const read = await readJson(input)
        const answer = workedOut(read)
        if (options.ics !== undefined) writeOutput(options.ics, scheduleCalendar(read, world.now()))
        for (const { level, text } of answer.findings) world.err(`${level}: ${text}\n`)
        if (options.json) world.out(`${JSON.stringify(options.full ? answer : answer.owed)}\n`)
        else world.out(told(answer))
      })
  },
}

function told(answer: ScheduleAnswer): string {
  const rows = answer.owed.map(({ what, who, dueFrom, dueBy, why }) => [
    dueFrom.slice(0, 16),
    dueBy.slice(0, 16),
    what,
    who,
    why,
  ])
  const medicines = answer.medicines.map(({ drug, doses, lastDose, stopDay, tablets }) => [
    drug,
    String(doses.length),
    doses[0] ?? '–',
    lastDose ?? '–',
    stopDay ?? '–',
    tablets ? `${tablets.total} (hand out ${tablets.handOut})` : '–',
  ])
  const courses =
    medicines.length === 0 ? '' : `\n${table(['medicine', 'doses', 'first', 'last', 'stops', 'tablets'], medicines)}`
  return `${table(['from', 'by', 'what', 'who', 'why'], rows)}${courses}${answer.caution}\n`
}
