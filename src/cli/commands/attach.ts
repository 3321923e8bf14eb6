import { readFileSync } from 'node:fs'
import { extname } from 'node:path'
import { InputError } from '#actions/input.ts'
import { attachFile } from '#actions/journal/attach-file.ts'
import { withClinic } from '../clinic-data.ts'
import type { CommandFile } from '../command.ts'

const mediaTypes: Readonly<Record<string, string>> = {
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.png': 'image/png',
  '.webp': 'image/webp',
  '.pdf': 'application/pdf',
  '.txt': 'text/plain',
  '.csv': 'text/csv',
}

export const attach: CommandFile = {
  name: 'attach',
  add: (program, world) => {
    program
      .command('attach')
      .description('take a photograph or paper in; prints its hash for the entry that refers to it')
      .argument('<file>', 'jpg, png, webp, pdf, txt or csv; the place a picture was taken is removed')
      .option('--data <folder>', 'the data folder')
      .option('--clinic <id>', 'which clinic, when there are several')
      .action((file: string, options: { data?: string; clinic?: string }) =>
        withClinic({ ...options, env: world.env }, async ({ store, clinic }) => {
          const mediaType = mediaTypeOf(file)
          const { hash, bytes } = await attachFile({ clinic, mediaType, bytes: read(file) }, { store })
          world.out(`${JSON.stringify({ hash, mediaType, bytes })}\n`)
        }),
      )
  },
}

function mediaTypeOf(file: string): string {
  const mediaType = mediaTypes[extname(file).toLowerCase()]
  if (mediaType !== undefined) return mediaType
  const known = Object.keys(mediaTypes).join(', ')
  throw new InputError('unknown-kind', 'file', `${file} is none of ${known}; save it as one of these.`)
}

function read(file: string): Uint8Array {
  try {
    return new Uint8Array(readFileSync(file))
  } catch (error) {
    throw new InputError('cannot-read', file, `Cannot read ${file}: ${(error as Error).message}`)
  }
}
