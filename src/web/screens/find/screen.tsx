import { useDeferredValue, useState } from 'react'
import { Link } from 'wouter'
import { owedScreen, findScreen as words } from '#content/wording/app-lists.ts'
import { fits } from '#core/identity/search.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { ListsBehind } from '../../design/lists-behind.tsx'
import { Page } from '../../design/page.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { TextField } from '../../design/text-field.tsx'
import { lists, useLists } from '../../journal/cases.ts'
import type { Lists } from '../../journal/database.ts'
import { caseHref } from '../../journal/hrefs.ts'
import styles from './screen.module.css'

type Row = Lists['cases'][number]

/** Finds a case by whatever the caller says first. */
export function FindScreen() {
  const reading = useLists()
  const [text, setText] = useState('')
  const wanted = useDeferredValue(text)
  return (
    <Page title={words.title} lead={words.lead}>
      <search>
        <TextField
          label={words.label}
          type="search"
          autoComplete="off"
          spellCheck={false}
          value={text}
          onText={setText}
        />
      </search>
      <ReadingView reading={reading} again={() => void lists.refresh()}>
        {({ cases, remaking }) => (
          <>
            <ListsBehind remaking={remaking} />
            <Found cases={cases.filter((row) => fits(row, wanted))} text={wanted} all={cases.length} />
          </>
        )}
      </ReadingView>
    </Page>
  )
}

function Found({ cases, text, all }: { readonly cases: readonly Row[]; readonly text: string; readonly all: number }) {
  if (all === 0) return <NoCase said={words.empty} />
  if (cases.length === 0) return <NoCase said={fill(words.found.none, { text })} help={words.noneHelp} />
  const count = sayCount(words.found, cases.length)
  return (
    <section aria-label={words.title} className="stack">
      <p role="status" className="soft">
        {text === '' ? words.all : count}
      </p>
      <ul className={`bare ${styles.cases}`}>
        {cases.slice(0, 200).map((row) => (
          <li key={row.stream} className={styles.case}>
            <Link href={caseHref(row.stream)} className={styles.name}>
              {row.name}
            </Link>
            <span>{owedScreen[row.species === 'cat' ? 'cat' : 'dog']}</span>
            <span className={styles.owner}>
              {row.ownerName ? fill(words.owner, { name: row.ownerName, phone: row.ownerPhone ?? words.noPhone }) : ''}
            </span>
            <span className="soft">{row.chip ? fill(words.chip, { chip: row.chip }) : words.noChip}</span>
            <span className="soft">{fill(words.chapter, { chapter: row.chapter })}</span>
            {row.conflicts > 0 && (
              <strong className={styles.conflict}>{sayCount(words.conflicts, row.conflicts)}</strong>
            )}
          </li>
        ))}
      </ul>
    </section>
  )
}

function NoCase({ said, help }: { readonly said: string; readonly help?: string }) {
  return (
    <div className="stack">
      <p role="status">{said}</p>
      {help && <p className="soft">{help}</p>}
      <p>
        <Link href="/new" data-weight="main">
          {words.newReferral}
        </Link>
      </p>
    </div>
  )
}
