import { bloodInSwabs } from '#content/protocols/blood-in-swabs.ts'
import { accountInEnglish as words } from '#content/wording/app-incident.ts'
import { nowInEnglish } from '#content/wording/app-now.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Procedure } from '#core/procedures/procedure.ts'
import { totalLoss } from '#core/theatre/blood-loss.ts'
import type { EmergencyAccount } from '#core/theatre/emergency-account.ts'
import { lossOf } from '#core/theatre/loss-of-entry.ts'
import { markName } from '#core/theatre/mark-name.ts'
import { clockFace } from '#core/theatre/shouts.ts'
import { clockOf } from '#core/time/moment.ts'
import { drugName } from '../case/drug-name.ts'
import { sayUnit } from '../case/say-quantity.ts'
import { spanWords } from './loss.ts'

/** One emergency in words, each part with the entries it was read from. */
export type SaidAccount = {
  readonly title: string
  readonly parts: readonly { readonly term: string; readonly said: string; readonly entries: readonly string[] }[]
}

/**
 * What the entries say of an emergency, in words: from when to when, what was given and stamped meanwhile, the loss that
 * had been written, and what somebody said of it at its end.
 */
export function sayAccount(account: EmergencyAccount, procedure: Procedure): SaidAccount {
  const { shout, from, until, given, steps, losses } = account
  const { zone } = shout.begun.header.happenedAt
  const about = { call: nowInEnglish.calls[shout.call], from: clockOf(from, zone) }
  const ids = (lines: readonly { readonly header: { readonly id: string } }[]) => lines.map(({ header }) => header.id)
  const text = shout.ended?.body.text ?? null
  return {
    title:
      until === null
        ? fill(words.lasts, about)
        : fill(words.called, { ...about, until: clockOf(until, zone), minutes: clockFace(from, until) }),
    parts: [
      {
        term: words.given,
        said:
          given
            .map(({ at, body }) =>
              fill(words.drug, { at: clockOf(at, zone), drug: drugName(body.drug), amount: sayUnit(body.amount) }),
            )
            .join('; ') || words.nothingGiven,
        entries: ids(given),
      },
      {
        term: words.steps,
        said:
          steps
            .map(({ at, body }) =>
              fill(words.step, { at: clockOf(at, zone), what: stepName(body.checkpoint, procedure) }),
            )
            .join('; ') || words.noSteps,
        entries: ids(steps),
      },
      { term: words.loss, said: sayLosses(losses), entries: ids(losses) },
      ...(text === null
        ? []
        : [{ term: words.words, said: text, entries: shout.ended ? [shout.ended.header.id] : [] }]),
    ],
  }
}

function stepName(checkpoint: string, { checkpoints }: Procedure): string {
  return checkpoints.find(({ id }) => id === checkpoint)?.title ?? markName(checkpoint, reportInEnglish) ?? checkpoint
}

function sayLosses(losses: EmergencyAccount['losses']): string {
  const judged = losses.map(({ body }) => lossOf(body, bloodInSwabs))
  const sum = totalLoss(judged.flatMap((one) => (one.kind === 'answer' ? [one.answer] : [])))
  return sum ? spanWords(sum) : words.noLoss
}
