import { Command, CommanderError } from 'commander'
import { InputError } from '#actions/input.ts'
import { StoreError } from '#actions/store.ts'
import { JournalFileBroken } from '#core/journal/journal-file.ts'
import { Exit, type World } from './command.ts'
import { commands } from './commands/index.ts'

/** Runs one command line and returns the exit status: 0 answered, 1 fault, 2 wrong input, 3 checked and found broken. */
export async function run(args: readonly string[], world: World): Promise<number> {
  // What commander says of a wrong call is said below, in the form every error has.
  const streams = { writeOut: world.out, writeErr: world.err, outputError: () => undefined }
  const program = new Command('quiet-ear')
    .description(
      'The whole course of end-stage ear surgery in a dog or a cat. Decision support for licensed veterinary professionals.',
    )
    .configureOutput(streams)
    .exitOverride()
  for (const command of commands) command.add(program, world)
  // A command inherits what the program does with exits and streams.
  for (const command of program.commands) command.exitOverride().configureOutput(streams)
  try {
    await program.parseAsync(args, { from: 'user' })
    return 0
  } catch (error) {
    return statusOf(error, world)
  }
}

function statusOf(error: unknown, world: World): number {
  const say = (code: string, path: string, message: string) =>
    world.err(`${JSON.stringify({ error: { code, path, message } })}\n`)
  if (error instanceof Exit) return error.status
  if (error instanceof CommanderError) {
    if (error.exitCode === 0) return 0
    say(
      'wrong-call',
      '',
      `${error.message
        .replace(/^error: /, '')
        .replace(/\.?\s*\n\s*/g, ' ')
        .replace(/\.$/, '')}; see quiet-ear --help.`,
    )
    return 2
  }
  if (error instanceof InputError) {
    say(error.code, error.path, error.message)
    return 2
  }
  if (error instanceof JournalFileBroken) {
    say('journal-file-broken', `line ${error.line}`, error.message)
    return 2
  }
  if (error instanceof StoreError) {
    say(`store-${error.code}`, '', error.message)
    return error.code === 'failed' ? 1 : 2
  }
  const named = error as Error & { code?: unknown }
  say('fault', '', named.message)
  if (world.env.QUIET_EAR_DEBUG) world.err(`${named.stack}\n`)
  return 1
}

const world: World = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  now: () => new Date().toISOString(),
  env: process.env,
}

// A reader that closes early (`| head`) is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error
})

process.exitCode = await run(process.argv.slice(2), world)
