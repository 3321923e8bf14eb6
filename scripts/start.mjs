/**
 * `npm start [-- OPTIONS]`: installs what is missing, builds what is out of date, and serves the clinic. In this very
 * process: whoever ends it ends the server.
 */
import { fileURLToPath } from 'node:url'
import { endWithParent } from './end-with-parent.mjs'
import { ready } from './ready.mjs'

await ready()
endWithParent()
const bundle = fileURLToPath(new URL('../dist/cli.js', import.meta.url))
process.argv = [process.argv[0], bundle, 'start', ...process.argv.slice(2)]
await import('../dist/cli.js')
