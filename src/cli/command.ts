import type { Command } from 'commander'

/** What a command may touch of the outside world; given, so that a command can be tested with real streams of its own. */
export type World = {
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  /** UTC with milliseconds. */
  readonly now: () => string
  readonly env: Readonly<Record<string, string | undefined>>
}

/** One command of the command line: `commands/<name>.ts` adds itself to the program. */
export type CommandFile = { readonly name: string; readonly add: (program: Command, world: World) => void }

/** Ends the program with this status after what was said; 0 answered, 1 fault, 2 wrong input, 3 found broken. */
export class Exit extends Error {
  readonly status: 0 | 1 | 2 | 3

  constructor(status: 0 | 1 | 2 | 3) {
    super(`exit ${status}`)
    this.status = status
  }
}
