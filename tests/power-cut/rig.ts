import { execFile, execFileSync, spawnSync } from 'node:child_process'
import { closeSync, ftruncateSync, mkdirSync, mkdtempSync, openSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { makerOf, openClinic, postEntries, ServerProcess, type SignedIn } from '../journeys/server-process.ts'

/**
 * Cuts the power of a file system under the running server: ext4 in an image of its own is shut down without
 * flushing anything, the process is killed, the image is mounted again as after a reboot, and the journal is read.
 * What it cannot show: a drive that says "flushed" and lies.
 */
export class Rig {
  readonly #folder = mkdtempSync(join(tmpdir(), 'quiet-ear-power-'))
  readonly #mount = join(this.#folder, 'disk')
  readonly #image = join(this.#folder, 'disk.img')
  /** Who was signed in at which clinic's folder: an acknowledged sign-in must outlive every cut. */
  readonly #signedIn = new Map<string, SignedIn>()
  readonly #programs: { readonly server: string; readonly reader: string }

  constructor(programs: { readonly server: string; readonly reader: string }) {
    this.#programs = programs
    mkdirSync(this.#mount)
    const image = openSync(this.#image, 'w')
    ftruncateSync(image, 256 * 1024 * 1024)
    closeSync(image)
    execFileSync('mkfs.ext4', ['-q', '-F', this.#image])
  }

  /** Why this machine cannot run the rig, or undefined when it can. */
  static missing(): string | undefined {
    if (process.platform !== 'linux' || process.getuid?.() !== 0) return 'it needs Linux and root'
    const programs = ['mkfs.ext4', 'mount', 'umount', 'losetup', 'perl']
    const absent = programs.filter((name) => spawnSync('sh', ['-c', `command -v ${name}`]).status !== 0)
    if (absent.length > 0) return `it needs ${absent.join(', ')}`
    if (spawnSync('losetup', ['-f']).status !== 0) return 'there is no loop device'
    return undefined
  }

  mount(): void {
    execFileSync('mount', ['-o', 'loop', this.#image, this.#mount])
  }

  unmount(): void {
    for (let tries = 0; tries < 50; tries += 1) {
      if (spawnSync('umount', [this.#mount]).status === 0) return
      spawnSync('sleep', ['0.1'])
    }
    throw new Error('The image stays busy and cannot be unmounted.')
  }

  /**
   * The ioctl FS_IOC_SHUTDOWN with EXT4_GOING_FLAGS_NOLOGFLUSH: from now on nothing reaches the image. Returns the
   * instant just before it, on the monotonic clock.
   */
  async cut(): Promise<number> {
    const { stdout } = await promisify(execFile)('perl', ['-e', shutDown, this.#mount])
    return Number(stdout)
  }

  /**
   * One power cut after so many milliseconds of writing, or of starting when the server is not waited for. Returns
   * what was acknowledged before the cut: in a real one nothing is acknowledged any more, while here the process runs
   * on for some milliseconds, and the kernel may then answer an fsync of a file system that is already shut down.
   */
  async round(name: string, writer: number, milliseconds: number, whileStarting: boolean): Promise<string[]> {
    const running = new ServerProcess(this.#programs.server, [join(this.#mount, name), '0'])
    const url = whileStarting ? undefined : await running.url
    if (!whileStarting && !url) throw new Error(`The server did not start: ${running.errors}`)
    const acknowledged = new Map<string, number>()
    const who = url ? await this.#whoAt(name, url, running.code) : undefined
    const writing =
      url && who
        ? Promise.all([0, 1, 2, 3].map((own) => writeUntilGone(url, writer * 4 + own, acknowledged, who)))
        : undefined
    await new Promise((resolve) => setTimeout(resolve, milliseconds))
    const cutAt = await this.cut()
    await running.end('SIGKILL')
    await writing
    this.unmount()
    return [...acknowledged].filter(([, at]) => at < cutAt).map(([id]) => id)
  }

  async #whoAt(name: string, url: string, code: string): Promise<SignedIn> {
    const known = this.#signedIn.get(name)
    if (known && code !== '') throw new Error('The clinic was opened before the cut, and is not open any more.')
    const who = known ?? (await openClinic(url, code))
    this.#signedIn.set(name, who)
    return who
  }

  read(name: string): { ids: string[]; broken: unknown; listsAgree: boolean } {
    const text = execFileSync(process.execPath, [this.#programs.reader, join(this.#mount, name)], {
      encoding: 'utf8',
      maxBuffer: 1e9,
    })
    return JSON.parse(text)
  }

  remove(): void {
    spawnSync('umount', ['-l', this.#mount])
    rmSync(this.#folder, { recursive: true, force: true })
  }
}

/** Prints the monotonic milliseconds, then shuts the file system of the given folder down. */
const shutDown = [
  'use Time::HiRes qw(clock_gettime CLOCK_MONOTONIC)',
  'open(my $folder, "<", $ARGV[0]) or die $!',
  'my $flag = pack("L", 2)',
  'printf("%.6f", clock_gettime(CLOCK_MONOTONIC) * 1000)',
  'ioctl($folder, 0x8004587d, $flag) or die $!',
].join('; ')

async function writeUntilGone(
  url: string,
  writer: number,
  acknowledged: Map<string, number>,
  who: SignedIn,
): Promise<void> {
  const make = makerOf(who, writer)
  for (let turn = 0; ; turn += 1) {
    const entries = Array.from({ length: 1 + (turn % 3) }, () => make({ stream: `case:${writer}-${turn % 9}` }))
    const posted = await postEntries(url, entries, who).catch(() => undefined)
    if (posted?.status === 401) throw new Error('Somebody signed in before the cut is not signed in any more.')
    if (posted?.status !== 200) return
    const at = Number(process.hrtime.bigint()) / 1e6
    for (const { id } of posted.body.entries ?? []) acknowledged.set(id, at)
  }
}
