import { type ReactNode, useDeferredValue, useState } from 'react'
import { sourcesInEnglish as words } from '#content/wording/app-sources.ts'
import { fill } from '#core/outcome/finding.ts'
import { TextField } from '../../design/text-field.tsx'

/** A list that a person narrows by typing: every word typed must stand somewhere in the text of a row. */
export function Searched<Row>(props: {
  readonly rows: readonly Row[]
  readonly textOf: (row: Row) => string
  readonly help: string
  readonly children: (rows: readonly Row[]) => ReactNode
}) {
  const { rows, textOf, help, children } = props
  const [text, setText] = useState('')
  const wanted = useDeferredValue(text).toLowerCase().split(/\s+/).filter(Boolean)
  const found = rows.filter((row) => {
    const said = textOf(row).toLowerCase()
    return wanted.every((word) => said.includes(word))
  })
  return (
    <>
      <search data-screen-only>
        <TextField
          label={words.search.label}
          help={help}
          type="search"
          autoComplete="off"
          spellCheck={false}
          value={text}
          onText={setText}
        />
      </search>
      <p role="status" className="soft">
        {found.length === 0
          ? fill(words.search.none, { text })
          : fill(words.search.found, { count: String(found.length), all: String(rows.length) })}
      </p>
      {found.length > 0 && children(found)}
    </>
  )
}
