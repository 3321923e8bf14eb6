import type { KnownBy } from '#core/choice/option.ts'
import { whyChoice } from '#core/why/why-choice.ts'
import { Why } from '../../../design/why.tsx'
import { entryHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'

export type AskedLine = {
  readonly text: string
  readonly known: KnownBy
  readonly from: readonly string[]
  readonly notes: readonly string[]
}

/** The question behind one line of the worksheet: what it was read from, and who published the reason. */
export function WhyLine({ option, line }: { readonly option: string; readonly line: AskedLine }) {
  const { id, nameOfEntry } = useCaseView()
  return (
    <Why
      about={line.text}
      make={() => whyChoice({ option, ...line, nameOfEntry })}
      hrefOf={(entry) => entryHref(id, entry)}
    />
  )
}
