import { useEffect, useMemo } from 'react'
import { useParams } from 'wouter'
import { caseInEnglish as words } from '#content/wording/app-case.ts'
import { chaptersInEnglish } from '#content/wording/app-chapters.ts'
import { Page } from '../../design/page.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { type OpenCase, useCase } from '../../journal/cases.ts'
import { streamOfHref } from '../../journal/hrefs.ts'
import { chapterHref } from './case-hrefs.ts'
import { CaseContext, caseViewOf, useCaseView } from './case-view.ts'
import { ChapterPart } from './chapter.tsx'
import { Conflicts } from './conflicts.tsx'
import { CaseHead, sayAnimal } from './head.tsx'
import { Lanes } from './lanes.tsx'
import styles from './screen.module.css'
import { SidesPart } from './sides-part.tsx'

/** One case on one page: who, both ears in time, and the eight chapters. */
export default function CaseScreen() {
  const { id = '' } = useParams()
  const reading = useCase(streamOfHref(id))
  return <ReadingView reading={reading}>{(open) => <CasePage open={open} id={id} />}</ReadingView>
}

export function CasePage({ open, id }: { readonly open: OpenCase; readonly id: string }) {
  const view = useMemo(() => caseViewOf(open, id), [open, id])
  const animal = view.file.theCase.latest('identity')?.body
  return (
    <CaseContext value={view}>
      <Page title={animal?.name ?? words.untitled} lead={animal && sayAnimal(animal)} wide>
        <CaseHead />
        <Conflicts />
        <SidesPart />
        <Contents />
        <Lanes />
        {view.chapters.chapters.map((chapter) => (
          <ChapterPart key={chapter.chapter} view={chapter} />
        ))}
      </Page>
      <Arrive />
    </CaseContext>
  )
}

/** The chapters of this page by name, with how they stand. */
function Contents() {
  const { chapters } = useCaseView().chapters
  return (
    <nav aria-label={words.parts} className={styles.contents}>
      <ol>
        {chapters.map(({ chapter, state }) => (
          <li key={chapter}>
            <a href={chapterHref(chapter)} data-state={state}>
              {chaptersInEnglish.chapters[chapter]}
            </a>
            <span>{chaptersInEnglish.states[state]}</span>
          </li>
        ))}
      </ol>
    </nav>
  )
}

/** Goes to the entry or the owed thing that the address names: opens what it is folded in, and takes the focus there. */
function Arrive() {
  useEffect(() => {
    const arrive = () => {
      const owed = new URLSearchParams(location.search).get('owed')
      const wanted = location.hash.length > 1 ? decodeURIComponent(location.hash.slice(1)) : owed && `owed-${owed}`
      const target = wanted ? document.getElementById(wanted) : null
      if (!target) return
      for (let part: Element | null = target; part; part = part.parentElement) {
        if (part instanceof HTMLDetailsElement) part.open = true
      }
      target.querySelector('details')?.setAttribute('open', '')
      target.scrollIntoView({ block: 'start' })
      target.focus({ preventScroll: true })
    }
    // After the heading of the page took the focus.
    const timer = setTimeout(arrive, 0)
    addEventListener('hashchange', arrive)
    return () => {
      clearTimeout(timer)
      removeEventListener('hashchange', arrive)
    }
  }, [])
  return null
}
