import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

/** The web app, built with `src/web` as root: from there to dist/web, split so that a sign-in page does not wait for the formulary. */
export default defineConfig({
  plugins: [react()],
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
