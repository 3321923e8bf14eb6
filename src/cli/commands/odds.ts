import { odds as answerOf } from '#actions/evidence/odds.ts'
import type { OddsAnswer } from '#actions/evidence/odds-answer.ts'
import { caution } from '#content/wording/caution.ts'
import { oddsCommandInEnglish as words } from '#content/wording/odds-command.ts'
import type { CommandFile } from '../command.ts'
import { readJson } from '../read-input.ts'
import { table } from '../table.ts'

export const odds: CommandFile = {
  name: 'odds',
  add: (program, world) => {
    program
      .command('odds')
      .description('what to expect of 100: published studies joined with own counts')
      .argument('<input>', 'a JSON file, or - for standard input')
      .option('--json', 'one JSON document on standard output')
      .action(async (input: string, options: { json?: boolean }) => {
        const answer = answerOf(await readJson(input))
        if (options.json) {
          world.out(`${JSON.stringify(answer)}\n`)
          return
        }
        const outcomes = 'outcomes' in answer ? answer.outcomes : [answer]
        const { columns } = words
        const header = [columns.outcome, columns.studies, columns.middle, columns.range, columns.own]
        const said = outcomes.map(({ outcome, say }) => `${outcome ?? '–'}: ${say.sentence}\n`)
        world.out(`${table(header, outcomes.map(rowOf))}\n${said.join('')}\n${caution}\n`)
      })
  },
}

function rowOf({ outcome, published, own, say }: OddsAnswer): string[] {
  return [
    outcome ?? '–',
    String(published?.studies ?? 0),
    say.middle === null ? '–' : String(say.middle),
    say.low === null ? '–' : `${say.low}–${say.high}`,
    own ? `${own.events} of ${own.total}` : '–',
  ]
}
