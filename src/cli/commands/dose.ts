import { dose as answerOf, type DoseAnswer } from '#actions/dosing/dose.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { plansOf, policiesOf } from '#core/dosing/from-journal.ts'
import { ownDefaultsOf } from '#core/dosing/own-defaults.ts'
import { fold } from '#core/journal/fold.ts'
import { withClinic } from '../clinic-data.ts'
import type { CommandFile } from '../command.ts'
import { readJournalFile } from '../journal-files.ts'
import { readJson } from '../read-input.ts'
import { amount, table } from '../table.ts'

type Drip = NonNullable<DoseAnswer['lines'][number]['drip']>
type Loading = NonNullable<DoseAnswer['lines'][number]['loading']>
type Options = { readonly json?: boolean; readonly case?: string; readonly data?: string; readonly clinic?: string }

export const dose: CommandFile = {
  name: 'dose',
  add: (program, world) => {
    program
      .command('dose')
      .description('work a dose plan out for one animal, or say why not')
      .argument('<input>', 'a JSON file, or - for standard input')
      .option('--json', 'one JSON document on standard output')
      .option('--case <file>', 'a case file: its usual plans may be named, its policies stand in')
      .option('--data <folder>', 'the data folder: its usual plans may be named, its policies stand in')
      .option('--clinic <id>', 'which clinic of the data folder')
      .action(async (input: string, options: Options) => {
        const house = fold(await houseEntries(options, world.env))
        const answer = answerOf(await readJson(input), {
          plans: plansOf(house),
          policies: policiesOf(house),
          own: ownDefaultsOf(house, dosingRules),
        })
        world.out(options.json ? `${JSON.stringify(answer)}\n` : told(answer))
      })
  },
}

/** The clinic's own stream, from a case file or a data folder when one was named; none otherwise. */
async function houseEntries(options: Options, env: Readonly<Record<string, string | undefined>>) {
  if (options.case) {
    const { entries } = await readJournalFile(options.case)
    return entries.filter((entry) => entry.header.stream === 'clinic')
  }
  if (!options.data) return []
  return withClinic({ ...options, env }, ({ store, clinic }) => store.stream(clinic, 'clinic'))
}

function told(answer: DoseAnswer): string {
  const rows = answer.lines.map((line) => [
    line.id,
    line.drug,
    line.verdict,
    amount(line.dose),
    amount(line.amount),
    amount(line.volume && short(line.volume)),
    amount(line.drawn),
    line.tablets ? amount(line.tablets.each) : '–',
    amount(line.delivered),
  ])
  const lines = table(['line', 'drug', 'verdict', 'dose', 'amount', 'volume', 'drawn', 'tablets', 'delivered'], rows)
  const findings = [
    ...answer.findings.map((finding) => `  ${finding.level}: ${finding.text}\n`),
    ...answer.lines.flatMap((line) =>
      line.findings.map((finding) => `  ${line.id}, ${finding.level}: ${finding.text}\n`),
    ),
  ]
  const drops = answer.lines.map(({ id, drip }) => (drip ? sayDrops(id, drip) : ''))
  const ceilings = answer.ceilings.map(({ group, used, limit }) => `  ceiling of ${group}: ${used} of ${limit} used\n`)
  const asks = answer.confirmation?.asks.map(({ code, lines }) =>
    lines.length > 0 ? `${code} (${lines.join(', ')})` : code,
  )
  const when = answer.confirmation?.secondName === 'later' ? 'within 24 h' : 'now'
  const second = asks ? `  one reason and a second person, ${when}, for: ${asks.join('; ')}\n` : ''
  return `${lines}${infusions(answer)}${drops.join('')}${ceilings.join('')}${findings.join('')}${second}${answer.caution}\n`
}

/** Each infusion both ways it is said, and once for every bag or syringe how it is made. */
function infusions(answer: DoseAnswer): string {
  const both = answer.lines.map(({ id, perHour, perMinute, rate }) => {
    const said = [perHour, perMinute].flatMap((one) => (one ? [amount(short(one))] : [])).join(', which is ')
    const pump = rate ? `, at ${amount(short(rate))}` : ''
    return said ? `  ${id}: ${said}${pump}\n` : ''
  })
  const before = answer.lines.map(({ id, loading }) => (loading ? sayLoading(id, loading) : ''))
  const made = answer.lines.map(({ bag, syringe }) => bag ?? syringe)
  const once = made.filter((one, index) => one && made.findIndex((other) => other?.name === one.name) === index)
  const steps = once.flatMap((one) => one?.steps.map((step) => `  ${one.name}: ${step}\n`) ?? [])
  return [...both, ...before, ...steps].join('')
}

/** What is given at once before an infusion; from a dilution when it is too little to draw. */
function sayLoading(id: string, { dose, amount: much, drawn, dilution, rate }: Loading): string {
  const from = dilution ? ` of 1 in ${dilution.parts}, ${amount(dilution.strength)}` : ''
  const volume = dilution?.drawn ?? drawn
  const draw = volume ? `: draw ${amount(volume)}${from}` : ''
  const pump = rate ? `, at ${amount(short(rate))}` : ''
  return `  ${id}: before it ${amount(dose)}, ${amount(short(much))}${draw}${pump}\n`
}

/** The drops of a line, then of each hour and of the deficit with it. */
function sayDrops(id: string, { set, count, gives, hours, together }: Drip): string {
  const say = (name: string, one: Pick<Drip, 'count' | 'gives'>) =>
    `  ${name}: ${one.count.value} drops a minute, which give ${amount(one.gives)}\n`
  const each = hours.map(({ hour, ...ofHour }) => say(`${id}, hour ${hour}`, ofHour))
  return [
    `  ${id}: a set of ${set.value} drops in a mL\n`,
    say(id, { count, gives }),
    ...each,
    together ? say(`${id} with its deficit`, together) : '',
  ].join('')
}

/** Four figures are what anybody reads of a rate. */
function short({ value, unit }: { readonly value: number; readonly unit: string }) {
  return { value: Number(value.toPrecision(4)), unit }
}
