import { InputError } from '#actions/input.ts'
import { project } from '#actions/journal/project.ts'
import { endOnSignals, serve } from '#server/serve.ts'
import { dataFolder } from '../clinic-data.ts'
import type { CommandFile } from '../command.ts'

type Options = { readonly data?: string; readonly port: string; readonly host?: string; readonly name?: string[] }

export const start: CommandFile = {
  name: 'start',
  add: (program, world) => {
    program
      .command('start')
      .description(
        'serve the clinic to the devices of its network; the first start prints a code for the first account',
      )
      .option('--data <folder>', 'the data folder')
      .option('--port <number>', 'the port', world.env.PORT ?? '4280')
      .option(
        '--host <address>',
        'the address to listen on: 127.0.0.1 for this machine only (all addresses without it)',
      )
      .option('--name <name...>', 'a public name this server goes by; addresses and names of the house are known')
      .action(async (options: Options) => {
        const port = Number(options.port)
        if (options.port.trim() === '' || !Number.isInteger(port) || port < 0 || port > 65_535) {
          const message = `"${options.port}" is not a port; write a number from 0 to 65535.`
          throw new InputError('wrong-port', 'port', message)
        }
        const { DATABASE_URL: databaseUrl } = world.env
        const place =
          databaseUrl && options.data === undefined
            ? { databaseUrl }
            : { dataDir: dataFolder({ ...options, env: world.env }) }
        const { host, name: names = [] } = options
        const listening = host === undefined ? { port, names } : { port, names, host }
        const serving = await serve({ ...place, ...listening, project }).catch((error) => {
          throw portTaken(error, port)
        })
        endOnSignals(serving)
        world.out(`Quiet Ear answers at ${serving.url}/api/health\n`)
        if (serving.firstCode !== null) world.out(`The code for the first account: ${serving.firstCode}\n`)
      })
  },
}

/** Another program on the port is no fault of this one. */
function portTaken(error: unknown, port: number): unknown {
  if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE') return error
  const message = `Another program answers at port ${port}; stop it, or name another port with --port.`
  return new InputError('port-in-use', 'port', message)
}
