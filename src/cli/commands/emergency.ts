import { emergency as answerOf } from '#actions/dosing/emergency.ts'
import type { CommandFile } from '../command.ts'
import { amount, table } from '../table.ts'

type Options = {
  readonly species: string
  readonly weight: string
  readonly decimalMark?: string
  readonly bodyCondition?: string
  readonly suspected?: string[]
  readonly json?: boolean
}
type Answer = ReturnType<typeof answerOf>

export const emergency: CommandFile = {
  name: 'emergency',
  add: (program, world) => {
    program
      .command('emergency')
      .description('the emergency sheet of one animal, by what is happening')
      .requiredOption('--species <species>', 'dog or cat')
      .requiredOption('--weight <weight>', 'as typed, with its unit: "4.1 kg" or "27 lb"')
      .option('--decimal-mark <mark>', 'how decimals are typed here: . or ,')
      .option('--body-condition <score>', 'from 1 to 9; from 7 on blood volume is counted on the lean weight')
      .option('--suspected <what...>', 'local-anaesthetic-toxicity bars intravenous lidocaine')
      .option('--json', 'one JSON document on standard output')
      .action(({ species, weight, decimalMark, bodyCondition, suspected, json }: Options) => {
        const answer = answerOf({
          species,
          weight,
          ...(decimalMark && { decimalMark }),
          ...(bodyCondition && { bodyCondition: Number(bodyCondition) }),
          ...(suspected && { suspected }),
        })
        world.out(json ? `${JSON.stringify(answer)}\n` : told(answer))
      })
  },
}

function told(answer: Answer): string {
  const findings = answer.findings.map((finding) => `${finding.level}: ${finding.text}\n`).join('')
  const groups = answer.groups.map((group) => `\n${group.title}\n${stepsOf(group)}${rowsOf(group)}`).join('')
  const marks = answer.lossAt.map(({ fraction, volume, act }) => [`${fraction * 100} %`, amount(volume), act])
  const blood = `\nBlood volume ${amount(answer.bloodVolume)} (${amount(answer.bloodVolume.perKg)})\n${table(['lost', 'volume', 'act'], marks)}`
  return `${answer.species}, ${answer.weightShown}\n${findings}${groups}${blood}\nDefibrillation\n${energyOf(answer)}\n${answer.caution}\n`
}

function stepsOf(group: Answer['groups'][number]): string {
  return group.steps.map(({ text }, place) => `  ${place + 1}. ${text}\n`).join('')
}

function rowsOf(group: Answer['groups'][number]): string {
  if (group.rows.length === 0) return ''
  const rows = group.rows.map((row) => [
    row.name,
    amount(row.dose),
    amount(row.amount),
    amount(row.stock),
    amount(row.drawn),
  ])
  const notes = group.rows.map((row) => `  ${row.name}: ${row.note}\n`).join('')
  return `${table(['drug', 'dose', 'amount', 'strength', 'draw'], rows)}${notes}`
}

function energyOf({ energy }: Answer): string {
  const rows = (['external', 'internal'] as const).flatMap((placement) =>
    (['biphasic', 'monophasic'] as const).map((waveform) => {
      const { low, high } = energy[placement][waveform]
      return [placement, waveform, `${amount(low)} to ${amount(high)}`]
    }),
  )
  return `${table(['paddles', 'wave', 'energy'], rows)}${energy.notes.map(({ text }) => `  ${text}\n`).join('')}`
}
