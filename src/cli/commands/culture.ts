import { culture as answerOf, type CultureAnswer } from '#actions/culture/culture.ts'
import { changedByWords, choiceStepWords, drugFlagWords, cultureTable as words } from '#content/wording/culture.ts'
import { optionWords } from '#content/wording/culture-options.ts'
import type { CommandFile } from '../command.ts'
import { readJson } from '../read-input.ts'
import { amount, table } from '../table.ts'

type Said = CultureAnswer['isolates'][number]
type Result = Said['results'][number]

export const culture: CommandFile = {
  name: 'culture',
  add: (program, world) => {
    program
      .command('culture')
      .description(
        'read the isolates of a culture by one edition of breakpoints, with what the numbers alone do not tell',
      )
      .argument('<input>', 'a JSON file, or - for standard input')
      .option('--json', 'one JSON document on standard output')
      .action(async (input: string, { json }: { readonly json?: boolean }) => {
        const answer = answerOf(await readJson(input))
        world.out(json ? `${JSON.stringify(answer)}\n` : told(answer))
      })
  },
}

function told({ standard, isolates, options, caution }: CultureAnswer): string {
  const parts = isolates.map((isolate) => {
    const rows = isolate.results.map((result) => [
      result.drug,
      result.raw,
      category(result),
      ends(result.breakpoint),
      beside(result),
    ])
    const findings = isolate.findings.map(({ level, text }) => `  ${level}: ${text}\n`).join('')
    const header = [words.drug, words.printed, words.category, words.breakpoint, words.beside]
    return `${isolate.id}. ${isolate.organism}\n${table(header, rows)}${findings}\n`
  })
  return `${standard}\n\n${parts.join('')}${options.map(option).join('')}${caution}\n`
}

/** One drug with every sentence about it, and the range of each way: no dose, unless somebody sent one. */
function option({ drug, verdict, why, whyNot, tier, ways, findings }: CultureAnswer['options'][number]): string {
  const ranges = ways.flatMap(({ route, range, interval }) =>
    range ? [`${route}: ${amount(range.low)} to ${amount(range.high)}, ${interval}`] : [],
  )
  const said = [...why, ...whyNot, ...(tier ? [tier.says] : []), ...ranges, ...findings.map(({ text }) => text)]
  return `${optionWords.verdicts[verdict]}: ${drug}\n${said.map((sentence) => `  ${sentence}\n`).join('')}\n`
}

function category({ category: read, possible }: Result): string {
  return possible ? `${read} (${possible.join(', ')})` : read
}

function ends(used: Result['breakpoint']): string {
  if (!used) return words.none
  const parts = [used.S && `S ${used.S}`, used.between, used.R && `R ${used.R}`].filter((part) => part)
  return used.dose ? `${parts.join(', ')}; ${used.dose}` : parts.join(', ')
}

function beside({ breakpoint, none, changedBy, before, fallback, flags }: Result): string {
  const reason = changedByWords[changedBy as keyof typeof changedByWords]
  return [
    ...(breakpoint ? [choiceStepWords[breakpoint.step]] : []),
    ...(none ? [none.text] : []),
    ...(reason ? [before ? `${reason} (${before})` : reason] : []),
    ...(fallback ? [`${fallback.category} ${fallback.breakpoint.standard}, ${fallback.breakpoint.host}`] : []),
    ...flags.map((flag) => drugFlagWords[flag as keyof typeof drugFlagWords] ?? flag),
  ].join('; ')
}
