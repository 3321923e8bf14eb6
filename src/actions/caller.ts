import type { Caller, World } from './action.ts'
import { Refused } from './refused.ts'

/** Who asks, and in which clinic. The server has turned strangers away before; this says so to the compiler. */
export function callerIn({ caller, clinic }: Pick<World, 'caller' | 'clinic'>): { caller: Caller; clinic: string } {
  if (caller && clinic !== null) return { caller, clinic }
  throw new Refused(401, 'not-signed-in', 'Sign in first: nobody is signed in at this device.')
}
