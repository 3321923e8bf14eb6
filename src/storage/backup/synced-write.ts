import { closeSync, fsyncSync, openSync, writeSync } from 'node:fs'

/** Writes a file that only its owner reads, and puts it on disk. */
export function syncedWrite(path: string, text: string): void {
  const file = openSync(path, 'w', 0o600)
  try {
    writeSync(file, text)
    fsyncSync(file)
  } finally {
    closeSync(file)
  }
}

/** Puts a file on disk that something else wrote. */
export function syncFile(path: string): void {
  const file = openSync(path, 'r+')
  try {
    fsyncSync(file)
  } finally {
    closeSync(file)
  }
}
