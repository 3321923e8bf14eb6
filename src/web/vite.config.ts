import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import react from '@vitejs/plugin-react'
import { defineConfig, type Plugin } from 'vite'

/** Writes the service worker with the list of the bundle's files, so that all of the app is on the device at once. */
function serviceWorker(): Plugin {
  return {
    name: 'service-worker',
    apply: 'build',
    generateBundle(_, bundle) {
      const wanted = Object.keys(bundle).filter((name) => /\.(js|css)$|-latin-wght-.*woff2$/.test(name))
      const files = ['/index.html', '/mark.svg', '/app.webmanifest', ...wanted.map((name) => `/${name}`)].sort()
      const version = createHash('sha256').update(files.join('\n')).digest('hex').slice(0, 16)
      const source = readFileSync(new URL('./service-worker.js', import.meta.url), 'utf8')
        .replace('self.__FILES__', JSON.stringify(files))
        .replace('self.__VERSION__', JSON.stringify(version))
      this.emitFile({ type: 'asset', fileName: 'service-worker.js', source })
    },
  }
}

/** The web app, built with `src/web` as root: to dist/web, split so that a sign-in page does not wait for the formulary. */
export default defineConfig({
  plugins: [react(), serviceWorker()],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    manifest: true,
    sourcemap: true,
    // A picture or font inside a style sheet would need data: in the content-security policy.
    assetsInlineLimit: 0,
  },
})
