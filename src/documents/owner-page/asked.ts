import { type Side, sides } from '#core/animal/species.ts'
import type { OptionId } from '#core/choice/option.ts'
import { optionIds } from '#core/journal/kinds/choice.ts'

/** What the address of the page asks for behind its question mark; anything else there is not read. */
export type Asked = {
  readonly a: OptionId | null
  readonly b: OptionId | null
  /** From 1; `all` for printing. */
  readonly step: number | 'all'
  readonly ear: Side | null
  readonly language: string | null
  /** What became of what was sent just now. */
  readonly sent: 'kept' | 'nothing' | 'too-long' | null
}

/** What stands behind the question mark of an address, or in a form that was sent. */
export type Fields = { readonly get: (name: string) => string | null }

const sentWords = ['kept', 'nothing', 'too-long'] as const

/** @example askedOf(new URLSearchParams('a=teca-lbo&b=no-treatment')).a // 'teca-lbo' */
export function askedOf(query: Fields): Asked {
  const oneOf = <Word extends string>(name: string, words: readonly Word[]) =>
    words.find((word) => word === query.get(name)) ?? null
  const step = query.get('step') ?? ''
  return {
    a: oneOf('a', optionIds),
    b: oneOf('b', optionIds),
    step: step === 'all' ? 'all' : /^[1-9]$/.test(step) ? Number(step) : 1,
    ear: oneOf('ear', sides),
    language: /^[a-z]{2,3}$/.test(query.get('language') ?? '') ? query.get('language') : null,
    sent: oneOf('sent', sentWords),
  }
}

/** The same page with something else asked, at one of its places. Relative, so that no page holds its own token. */
export function hrefOf(asked: Asked, change: Partial<Asked>, place: string): string {
  const { a, b, step, ear, language } = { ...asked, ...change }
  // Only words of our own lists stand here; none needs to be encoded.
  const query = [
    ...(a ? [`a=${a}`] : []),
    ...(b ? [`b=${b}`] : []),
    ...(step === 1 ? [] : [`step=${step}`]),
    ...(ear ? [`ear=${ear}`] : []),
    ...(language ? [`language=${language}`] : []),
  ]
  return `?${query.join('&')}#${place}`
}
