import { readFile } from 'node:fs/promises'
import { InputError } from '#actions/input.ts'

/** The JSON document of a file, or of standard input for `-`. */
export async function readJson(path: string): Promise<unknown> {
  const text = await readText(path)
  try {
    // Some editors begin a file with a byte order mark.
    return JSON.parse(text.replace(/^\uFEFF/, ''))
  } catch (error) {
    throw new InputError(
      'not-json',
      '',
      `${path === '-' ? 'Standard input' : path} is not JSON: ${(error as Error).message}`,
    )
  }
}

/** The text of a file, or of standard input for `-`. */
export async function readText(path: string): Promise<string> {
  if (path !== '-') {
    try {
      return await readFile(path, 'utf8')
    } catch (error) {
      throw cannotRead(path, error)
    }
  }
  const chunks: Buffer[] = []
  for await (const chunk of process.stdin) chunks.push(chunk as Buffer)
  return Buffer.concat(chunks).toString('utf8')
}

/** A file that cannot be read is a wrong input, said in one sentence. */
export function cannotRead(path: string, error: unknown): InputError {
  const code = (error as NodeJS.ErrnoException).code
  const why = code === 'ENOENT' ? 'there is no such file' : code === 'EISDIR' ? 'it is a folder' : (code ?? 'unknown')
  return new InputError('cannot-read', path, `Cannot read ${path}: ${why}.`)
}
