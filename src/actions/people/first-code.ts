import type { World } from '../action.ts'
import { Refused } from '../refused.ts'
import { hashOf } from './caller.ts'
import { drawnCode, plainCode } from './drawn-code.ts'

type Parts = Pick<World, 'accounts' | 'secrets' | 'clock'>

/** The code for the first account: made here; or made elsewhere, at that instant, and known there only. */
export type FirstCodeMade = { readonly text: string } | { readonly madeElsewhere: string }

/**
 * Makes the one-time code of the first account: one for every process on the same database, which keeps its hash. One
 * that is there already stands, unless it is to be replaced. Null once somebody has an account.
 */
export async function makeFirstCode(
  { accounts, secrets, clock }: Parts,
  how: { readonly replace: boolean },
): Promise<FirstCodeMade | null> {
  if (await accounts.any()) return null
  const text = drawnCode(secrets, 3)
  const mine = { hash: hashOf(plainCode(text)), madeAt: clock.now() }
  const stands = await accounts.offerFirstCode(mine, how.replace)
  return stands.hash === mine.hash ? { text } : { madeElsewhere: stands.madeAt }
}

/** A new code in the place of the one before, for whoever holds the machine and has lost that. */
export async function replaceFirstCode(parts: Parts): Promise<string> {
  const made = await makeFirstCode(parts, { replace: true })
  if (made && 'text' in made) return made.text
  const message =
    'Somebody has an account already, so there is no first code; a lost password is mended with account reset.'
  throw new Refused(409, 'already-open', message)
}
