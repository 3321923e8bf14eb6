import { mkdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { InputError } from '#actions/input.ts'

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such folder',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of its path is a file',
  EEXIST: 'a file of that name stands there',
  EACCES: 'this user may not write there',
  EPERM: 'this user may not write there',
  EROFS: 'the disk is read-only',
  ENAMETOOLONG: 'the name is too long',
}

/** A place that cannot be written is a wrong input and said in one sentence; a full disk stays a fault. */
export function cannotWrite(path: string, error: unknown): unknown {
  const why = reasons[(error as NodeJS.ErrnoException).code ?? '']
  return why === undefined ? error : new InputError('cannot-write', path, `Cannot write ${path}: ${why}.`)
}

/** Where to write before the rename; a pipe or a device is written in place, because a rename would replace it. */
export function beside(path: string): string {
  const there = statSync(path, { throwIfNoEntry: false })
  return there === undefined || there.isFile() ? `${path}.part` : path
}

/** Written beside and then renamed: a file of that name is either whole or not there. */
export function writeOutput(path: string, content: string | Uint8Array): void {
  const part = beside(path)
  try {
    writeFileSync(part, content)
    if (part !== path) renameSync(part, path)
  } catch (error) {
    if (part !== path) rmSync(part, { force: true })
    throw cannotWrite(path, error)
  }
}

/** Makes a folder and those above it. One step at a time: the recursive call of Node never ends on some file systems. */
export function makeOutputFolder(path: string): void {
  if (statSync(path, { throwIfNoEntry: false })?.isDirectory()) return
  if (dirname(path) !== path) makeOutputFolder(dirname(path))
  try {
    mkdirSync(path)
  } catch (error) {
    throw cannotWrite(path, error)
  }
}
