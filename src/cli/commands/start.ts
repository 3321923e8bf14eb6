import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { InputError } from '#actions/input.ts'
import { project } from '#actions/journal/project.ts'
import { endOnSignals, type Serving, serve } from '#server/serve.ts'
import type { TlsOptions } from '#server/tls/secure-server.ts'
import { dataFolder } from '../clinic-data.ts'
import type { CommandFile, World } from '../command.ts'

type Options = {
  readonly data?: string
  readonly port: string
  readonly host?: string
  readonly name?: string[]
  readonly backups?: string
  readonly certificate?: string
  readonly key?: string
  readonly tls: boolean
}

export const start: CommandFile = {
  name: 'start',
  add: (program, world) => {
    program
      .command('start')
      .description(
        'serve the clinic to the devices of its network; the first start prints a code for the first account',
      )
      .option('--data <folder>', 'the data folder')
      .option('--port <number>', 'the port; the encrypted one is the next', world.env.PORT ?? '4280')
      .option(
        '--host <address>',
        'the address to listen on: 127.0.0.1 for this machine only (all addresses without it)',
      )
      .option('--name <name...>', 'a public name this server goes by; addresses and names of the house are known')
      .option('--backups <folder>', 'where backups stand; best on another disk (in the data folder without it)')
      .option('--certificate <file>', 'a certificate of the clinic (PEM) instead of one of its own authority')
      .option('--key <file>', 'the private key of that certificate (PEM)')
      .option('--no-tls', 'without the encrypted port')
      .action(async (options: Options) => {
        const serving = await serveAs(options, world)
        endOnSignals(serving)
        world.out(greeting(serving))
      })
  },
}

async function serveAs(options: Options, { env }: World): Promise<Serving> {
  const port = portOf(options)
  const data = dataFolder({ ...options, env })
  const place = env.DATABASE_URL && options.data === undefined ? { databaseUrl: env.DATABASE_URL } : { dataDir: data }
  const { host, name: names = [], backups } = options
  const tls = tlsOf(options, data)
  try {
    return await serve({
      ...place,
      port,
      names,
      project,
      // Beside the bundle, where the build puts it.
      web: fileURLToPath(new URL('./web', import.meta.url)),
      ...(host !== undefined && { host }),
      ...(backups !== undefined && { backups }),
      ...(tls && { tls }),
    })
  } catch (error) {
    throw portTaken(error, port)
  }
}

function portOf({ port: text, tls }: Options): number {
  const port = Number(text)
  const last = tls ? 65_534 : 65_535
  if (text.trim() !== '' && Number.isInteger(port) && port >= 0 && port <= last) return port
  const message = `"${text}" is not a port; write a number from 0 to ${last}.`
  throw new InputError('wrong-port', 'port', message)
}

function tlsOf({ tls, certificate, key }: Options, data: string): TlsOptions | undefined {
  if (!tls) return undefined
  if (certificate === undefined && key === undefined) return { folder: join(data, 'tls') }
  if (certificate !== undefined && key !== undefined) return { certificate, key }
  throw new InputError(
    'missing-field',
    certificate === undefined ? 'certificate' : 'key',
    'A certificate of the clinic needs both --certificate and --key.',
  )
}

/** Another program on a port is no fault of this one. */
function portTaken(error: unknown, port: number): unknown {
  const { code, port: taken = port } = error as NodeJS.ErrnoException & { port?: number }
  if (code !== 'EADDRINUSE') return error
  const message = `Another program answers at port ${taken}; stop it, or name another port with --port.`
  return new InputError('port-in-use', 'port', message)
}

/** What whoever started it needs to know, in the order they need it. */
function greeting({ addresses, fingerprint, firstCode, firstCodeElsewhere, url }: Serving): string {
  const here = `http://localhost:${new URL(url).port}`
  const network = (urls: readonly string[]) => urls.filter((one) => !one.includes('//localhost:'))
  const lines = [
    ['On this machine', here],
    ...network(addresses.plain).map((one) => ['On the clinic network', one]),
    ...network(addresses.encrypted).map((one) => ['Encrypted', one]),
    ['To connect a tablet', `${network(addresses.plain)[0] ?? here}/connect`],
    ...(fingerprint === null ? [] : [['Fingerprint of its certificate', fingerprint]]),
    ...(firstCode === null ? [] : [['Code for the first account', firstCode]]),
  ]
  const elsewhere =
    firstCodeElsewhere === null
      ? ''
      : `  The code for the first account was printed by another start on this database, at ${firstCodeElsewhere}.\n  Lost? quiet-ear account first-code prints a new one.\n`
  const text = lines.map(([what = '', value = '']) => `  ${what.padEnd(32)}${value}`).join('\n')
  return `Quiet Ear answers.\n${text}\n${elsewhere}It ends with Ctrl-C.\n`
}
