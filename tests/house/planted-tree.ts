import { spawnSync } from 'node:child_process'
import { copyFileSync, mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const house = fileURLToPath(new URL('../..', import.meta.url)).replace(/\/$/, '')

/** A small tree with our own configuration and the given files, for rules that must be seen to fail. */
export class PlantedTree {
  readonly root = realpathSync(mkdtempSync(join(tmpdir(), 'quiet-ear-house-')))

  constructor(files: Readonly<Record<string, string>>) {
    for (const shared of ['.dependency-cruiser.cjs', 'package.json', 'tsconfig.json']) {
      copyFileSync(join(house, shared), join(this.root, shared))
    }
    symlinkSync(join(house, 'node_modules'), join(this.root, 'node_modules'), 'dir')
    for (const [path, text] of Object.entries(files)) this.write(path, text)
  }

  write(path: string, text: string): void {
    mkdirSync(dirname(join(this.root, path)), { recursive: true })
    writeFileSync(join(this.root, path), text)
  }

  remove(): void {
    rmSync(this.root, { recursive: true, force: true })
  }
}

/** Runs one of our scripts as a person would, and gives back its status and everything it said. */
export function runScript(script: string, args: readonly string[], cwd = house): { status: number; said: string } {
  const run = spawnSync(process.execPath, [join(house, 'scripts', script), ...args], { cwd, encoding: 'utf8' })
  return { status: run.status ?? -1, said: `${run.stdout}${run.stderr}` }
}
