import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('..', import.meta.url))

/** Lends a function that loads a TypeScript module of src by its path, and closes the loader afterwards. */
export async function withSource(work) {
  const { createServer } = await import('vite')
  const server = await createServer({
    root,
    configFile: false,
    logLevel: 'error',
    appType: 'custom',
    server: { middlewareMode: true, watch: null, hmr: false, ws: false },
    optimizeDeps: { noDiscovery: true, include: [] },
  })
  try {
    return await work((path) => server.ssrLoadModule(`/src/${path}`))
  } finally {
    await server.close()
  }
}
