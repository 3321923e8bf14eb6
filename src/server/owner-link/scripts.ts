import type { Hono } from 'hono'
import type { WebFile } from '../web-files.ts'

/** What the phone of an owner may run: small files of this house, beside the built screens. Every page is whole without. */
const scripts = ['keep.js', 'note.js', 'questions.js', 'database.js', 'elements.js', 'sending.js', 'worker.js'] as const

export function isOwnerScript(path: string): boolean {
  return scripts.some((name) => path === `/o/${name}`)
}

export function offerOwnerScripts(app: Hono, files: ReadonlyMap<string, WebFile> | undefined): void {
  for (const name of scripts) {
    app.get(`/o/${name}`, (c, next) => {
      const file = files?.get(`/owner-link/${name}`)
      if (!file) return next()
      return c.body(file.plain, 200, { 'content-type': file.type, 'cache-control': 'no-cache', etag: file.tag })
    })
  }
}
