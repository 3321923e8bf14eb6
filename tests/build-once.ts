import { build, isBuilt } from '../scripts/build.mjs'

/** The tests of the command line run the bundle that users run. */
export async function setup(): Promise<void> {
  if (!isBuilt()) await build()
}
