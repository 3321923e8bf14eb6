import { reportInEnglish as words } from '#content/wording/report.ts'
import type { Case } from '#core/journal/fold.ts'
import type { Procedure } from '#core/procedures/procedure.ts'
import { emergencyAccounts } from '#core/theatre/emergency-account.ts'
import { type Block, facts, heading, paragraph } from '../render/model.ts'
import { sayAccount } from './emergency-words.ts'

/** Every emergency of an operation as its entries tell it; nothing of it was typed for the report. */
export function emergencyBlocks(theCase: Case, operation: string, procedure: Procedure): Block[] {
  const accounts = emergencyAccounts(theCase, operation)
  if (accounts.length === 0) return [paragraph(words.noEmergency)]
  return accounts.flatMap((account) => {
    const { title, parts } = sayAccount(account, procedure)
    return [heading(2, title), facts(...parts.map(({ term, said }) => [term, said] as const))]
  })
}
