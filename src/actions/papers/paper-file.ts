import { isPaper } from '#documents/case/paper-input.ts'
import { renderHtml } from '#documents/render/html.ts'
import type { Paper } from '#documents/render/model.ts'
import { renderText } from '#documents/render/text.ts'
import type { World } from '../action.ts'
import { Refused } from '../refused.ts'
import { openCase } from './open-case.ts'
import { dataOf, papersOf } from './pack.ts'

export type PaperFile = {
  readonly mediaType: string
  readonly content: Uint8Array | string
  /** Looked at in the browser, or saved for another program. */
  readonly shown: boolean
}

const forms = { pdf: 'application/pdf', html: 'text/html', txt: 'text/plain' } as const

/**
 * One file of a case by its name: a paper as PDF, page or plain text, or a file for another program. A paper that the
 * case has not reached is refused with what it waits for.
 */
export async function paperFile(
  { stream, file: name }: { readonly stream: string; readonly file: string },
  world: World,
  print: (paper: Paper) => Promise<Uint8Array>,
): Promise<PaperFile> {
  const { file, on } = await openCase(stream, world)
  const data = dataOf(file, on).find((one) => one.file === name)
  if (data) return { mediaType: data.mediaType, content: data.make(), shown: false }
  for (const { name: base, definition, make } of papersOf(file, on)) {
    for (const form of ['pdf', 'html', 'txt'] as const) {
      if (name !== `${base}.${form}`) continue
      const made = make()
      if (!isPaper(made)) throw new Refused(404, 'not-yet', `${definition.title}: ${made.because}.`)
      const content = { pdf: () => print(made), html: () => renderHtml(made), txt: () => renderText(made) }[form]()
      return { mediaType: forms[form], content: await content, shown: true }
    }
  }
  throw new Refused(404, 'no-such-paper', 'This case has no paper of that name.')
}
