import { SideWord } from './side-word.tsx'

const sideWord = /\b(LEFT|RIGHT)\b/

/**
 * A sentence in which LEFT and RIGHT are set as side words, as they are everywhere.
 *
 * @example <WithSides text="Stitches and wound, LEFT ear" />
 */
export function WithSides({ text }: { readonly text: string }) {
  return text.split(sideWord).map((part, index) =>
    part === 'LEFT' || part === 'RIGHT' ? (
      // The parts of one sentence never change their order.
      // biome-ignore lint/suspicious/noArrayIndexKey: see above
      <SideWord key={index} side={part} />
    ) : (
      part
    ),
  )
}
