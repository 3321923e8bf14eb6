import { useEffect, useState } from 'react'
import type { IndexEarsAnswer } from '#actions/late/find-index-ears.ts'
import type { ToldOf } from '#core/late/index-ears.ts'
import { call, Refused, Unreachable } from '../journal/api.ts'

/** What the server is asked: the animal as it was told, and the file it was told in. */
export type Wanted = Omit<ToldOf, 'streams'> & { readonly stream: string | null }
export type ShownEar = IndexEarsAnswer['ears'][number]

export type IndexEars =
  /** Nothing is asked: no late sign was told, or nothing is known of the animal yet. */
  | { readonly kind: 'nothing' }
  | { readonly kind: 'asking' }
  | { readonly kind: 'found'; readonly ears: readonly ShownEar[]; readonly leftOff: number }
  /** The server does not answer: nobody can look. */
  | { readonly kind: 'away' }

/** Typing never waits, and nobody asks at every key. */
const pause = 250
/** Somebody is on the telephone: after that nobody could look. */
const patience = 5_000

/** Asks the server for the operated ears to which a late sign may belong, whenever what is told of the animal changed. */
export function useIndexEars(wanted: Wanted | null): IndexEars {
  const text = wanted === null ? null : JSON.stringify(wanted)
  const [found, setFound] = useState<{ readonly of: string; readonly ears: IndexEars } | null>(null)
  useEffect(() => {
    if (text === null) return
    let gone = false
    const timer = setTimeout(() => {
      void lookFor(JSON.parse(text) as Wanted).then((ears) => gone || setFound({ of: text, ears }))
    }, pause)
    return () => {
      gone = true
      clearTimeout(timer)
    }
  }, [text])
  if (text === null) return { kind: 'nothing' }
  return found?.of === text ? found.ears : { kind: 'asking' }
}

/** One look, at once. */
export async function lookFor(wanted: Wanted): Promise<IndexEars> {
  const late = new Promise<IndexEars>((done) => setTimeout(() => done({ kind: 'away' }), patience))
  const asked = call<IndexEarsAnswer>('find-index-ears', wanted).then(
    ({ ears, leftOff }): IndexEars => ({ kind: 'found', ears, leftOff }),
    (error: unknown): IndexEars => {
      if (error instanceof Unreachable || error instanceof Refused) return { kind: 'away' }
      throw error
    },
  )
  return Promise.race([asked, late])
}
