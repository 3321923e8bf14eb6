import { useMemo } from 'react'
import { Link, useSearchParams } from 'wouter'
import { choiceContent } from '#content/choice/index.ts'
import { options } from '#content/options/index.ts'
import { caseInEnglish } from '#content/wording/app-case.ts'
import { choiceInEnglish as words } from '#content/wording/app-choice.ts'
import { affectedEars } from '#core/chapters/ears.ts'
import { type EarSheet, worksheetOf } from '#core/choice/worksheet.ts'
import { fill } from '#core/outcome/finding.ts'
import { Caution } from '../../../design/caution.tsx'
import { Notice } from '../../../design/notice.tsx'
import { Page } from '../../../design/page.tsx'
import { SideWord } from '../../../design/side-word.tsx'
import { casePageHref, choiceHref, writeHref } from '../case-hrefs.ts'
import { CaseLine } from '../case-line.tsx'
import { useCaseView } from '../case-view.ts'
import { WithCase } from '../with-case.tsx'
import styles from './choice.module.css'
import { LackingPart } from './lacking-part.tsx'
import { OptionsPart } from './options-part.tsx'
import { RoutesPart } from './routes-part.tsx'
import { WritePart } from './write-part.tsx'

/** The worksheet of a choice: for each ear every option, what speaks for and against it, what is missing. */
export default function ChoiceScreen() {
  return (
    <WithCase>
      <ChoicePage />
    </WithCase>
  )
}

function ChoicePage() {
  const { file, id } = useCaseView()
  const [query] = useSearchParams()
  const sheets = useMemo(() => worksheetOf(file.theCase, { content: choiceContent, options }), [file])
  const sheet = sheets.find(({ side }) => side === query.get('ear')) ?? sheets[0]
  return (
    <Page title={words.title} lead={words.lead} whose={<CaseLine />} wide>
      {!file.theCase.latest('identity') && (
        <Notice tone="warn" title={words.noAnimal}>
          <p data-screen-only>
            <Link href={writeHref(id, 'identity')}>{words.toIdentity}</Link>
          </p>
        </Notice>
      )}
      {affectedEars(file.theCase).length === 0 && <p className="soft">{words.sideOpen}</p>}
      {sheets.length > 1 && sheet && <Ears sheets={sheets} shown={sheet} />}
      {sheet && <EarPart key={sheet.side} sheet={sheet} />}
      <Caution />
      <p data-screen-only>
        <Link href={casePageHref(id)}>{caseInEnglish.history.back}</Link>
      </p>
    </Page>
  )
}

/** Both ears by their word; the one that is shown is marked in words too. */
function Ears({ sheets, shown }: { readonly sheets: readonly EarSheet[]; readonly shown: EarSheet }) {
  const { id } = useCaseView()
  return (
    <nav aria-label={words.ears} className={styles.ears} data-screen-only>
      {sheets.map(({ side }) => (
        <Link key={side} href={choiceHref(id, side)} aria-current={side === shown.side ? 'page' : undefined}>
          {fill(words.ear, { side })}
        </Link>
      ))}
    </nav>
  )
}

function EarPart({ sheet }: { readonly sheet: EarSheet }) {
  const [before, after] = words.ear.split('{side}')
  return (
    <section className={styles.ear} aria-labelledby={`ear-${sheet.side}`}>
      <h2 id={`ear-${sheet.side}`}>
        {before}
        <SideWord side={sheet.side} />
        {after}
      </h2>
      <RoutesPart sheet={sheet} />
      <LackingPart sheet={sheet} />
      <OptionsPart sheet={sheet} />
      <WritePart sheet={sheet} />
    </section>
  )
}
