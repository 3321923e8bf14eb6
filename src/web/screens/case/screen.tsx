import { Fragment, useEffect } from 'react'
import { caseInEnglish as words } from '#content/wording/app-case.ts'
import { chaptersInEnglish } from '#content/wording/app-chapters.ts'
import { ownerLinksInEnglish } from '#content/wording/app-owner-links.ts'
import { papersScreen } from '#content/wording/app-papers.ts'
import { vetLinksInEnglish } from '#content/wording/app-vet-links.ts'
import type { Chapter } from '#core/chapters/chapter.ts'
import type { ChapterState } from '#core/chapters/chapters-of.ts'
import { linesOfOperation } from '#core/dosing/from-journal.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { isLate, type OwedItem } from '#core/owed/owed-item.ts'
import { Page } from '../../design/page.tsx'
import { useMinute } from '../../journal/use-minute.ts'
import { AgreementLink } from './agreement/agreement-link.tsx'
import { Blood } from './blood.tsx'
import { chapterHref } from './case-hrefs.ts'
import { useCaseView } from './case-view.ts'
import { ChapterPart } from './chapter.tsx'
import { ChoiceLink } from './choice-link.tsx'
import { Conflicts } from './conflicts.tsx'
import { Doses } from './doses.tsx'
import { FindingsPair } from './findings-pair.tsx'
import { CaseHead, sayAnimal } from './head.tsx'
import { HomeNow } from './home-now.tsx'
import { Lanes } from './lanes.tsx'
import { LateNotice } from './late/notice.tsx'
import { LoopStrips } from './loop-strip.tsx'
import { NerveCourses } from './nerve-course/part.tsx'
import { Odds } from './odds.tsx'
import { OwnerLinks, ownerLinksHref } from './owner-links.tsx'
import { OwnerNotes } from './owner-notes.tsx'
import { Papers, papersHref } from './papers.tsx'
import { PlanLink } from './plan-link.tsx'
import { Plates } from './plates.tsx'
import { QuestionsPart } from './questions/questions-part.tsx'
import { RoomLink } from './room-link.tsx'
import styles from './screen.module.css'
import { FirstSideLink } from './second-side/first-link.tsx'
import { SecondSidePart } from './second-side/part.tsx'
import { SidesPart } from './sides-part.tsx'
import { SpecimensLink } from './specimens-link.tsx'
import { TroubleLink } from './trouble-link.tsx'
import { VetLinks, vetLinksHref } from './vet-links.tsx'
import { WardLink } from './ward-link.tsx'
import { WithCase } from './with-case.tsx'

/** One case on one page: who, both ears in time, and the eight chapters. */
export default function CaseScreen() {
  return (
    <WithCase>
      <CasePage />
    </WithCase>
  )
}

export function CasePage() {
  const { file, chapters } = useCaseView()
  const animal = file.theCase.latest('identity')?.body
  return (
    <>
      <Page title={animal?.name ?? words.untitled} lead={animal && sayAnimal(animal)} wide>
        <CaseHead />
        <Conflicts />
        <SidesPart />
        <LateNotice />
        <Contents />
        <Lanes />
        <SecondSidePart />
        <LoopStrips />
        {chapters.chapters.map((view) => (
          <ChapterPart key={view.chapter} view={view}>
            <Panels chapter={view.chapter} state={view.state} />
          </ChapterPart>
        ))}
        <OwnerLinks />
        <VetLinks />
        <Papers />
      </Page>
      <Arrive />
    </>
  )
}

const afterTheatre: ReadonlySet<Chapter> = new Set<Chapter>(['Ward', 'Home', 'Year'])

/** What stands above the entries of a chapter: their sense, worked out. */
function Panels({ chapter, state }: { readonly chapter: Chapter; readonly state: ChapterState }) {
  const { operations, file, chapters } = useCaseView()
  // Where nothing is planned the way to it stands among what is missing.
  const isPlanned = (id: string) => linesOfOperation(file.theCase, id).lines.length > 0
  // The course of face and eye stands once, in the last chapter after theatre that the case has reached.
  const latest = chapters.chapters.findLast(
    (view) => afterTheatre.has(view.chapter) && view.state !== 'not-reached',
  )?.chapter
  // Nobody has written anything of the year yet: the owner may be asked all the same.
  if (state === 'not-reached') return chapter === 'Year' ? <QuestionsPart /> : null
  switch (chapter) {
    case 'Work-up':
      return (
        <>
          <FindingsPair />
          <Plates />
          <SpecimensLink />
        </>
      )
    case 'Choice':
      return (
        <>
          <ChoiceLink />
          <Odds />
        </>
      )
    case 'Agreement':
      return <AgreementLink />
    case 'Theatre':
      return operations.map((operation) => (
        <Fragment key={operation.id}>
          <FirstSideLink operation={operation} />
          <RoomLink operation={operation.id} />
          <Doses operation={operation} />
          {operation.done === null && isPlanned(operation.id) && <PlanLink operation={operation.id} />}
          <Blood operation={operation} />
        </Fragment>
      ))
    case 'Ward':
      return (
        <>
          <WardLink />
          <TroubleLink />
          {chapter === latest && <NerveCourses />}
        </>
      )
    case 'Home':
      return (
        <>
          <HomeNow />
          <OwnerNotes />
          <TroubleLink />
          {chapter === latest && <NerveCourses />}
        </>
      )
    case 'Year':
      return (
        <>
          <NerveCourses />
          <SpecimensLink />
          <QuestionsPart />
          <TroubleLink />
        </>
      )
    default:
      return null
  }
}

/** The chapters of this page by name, with how they stand. */
function Contents() {
  const { chapters } = useCaseView().chapters
  const now = useMinute()
  return (
    <nav aria-label={words.parts} className={styles.contents}>
      <ol>
        {chapters.map(({ chapter, state, next }) => (
          <li key={chapter}>
            <a href={chapterHref(chapter)} data-state={state}>
              {chaptersInEnglish.chapters[chapter]}
            </a>
            <span>{sayState(state, next, now)}</span>
          </li>
        ))}
        <li>
          <a href={ownerLinksHref}>{ownerLinksInEnglish.title}</a>
        </li>
        <li>
          <a href={vetLinksHref}>{vetLinksInEnglish.title}</a>
        </li>
        <li>
          <a href={papersHref}>{papersScreen.title}</a>
        </li>
      </ol>
    </nav>
  )
}

/** "open, 3 owed, 1 late". */
function sayState(state: ChapterState, next: readonly OwedItem[], now: string): string {
  const late = next.filter((item) => isLate(item, now)).length
  return [
    chaptersInEnglish.states[state],
    ...(next.length === 0 ? [] : [sayCount(words.owed, next.length)]),
    ...(late === 0 ? [] : [fill(words.owed.late, { count: String(late) })]),
  ].join(', ')
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
      if (target.id.startsWith('entry-')) target.querySelector('details')?.setAttribute('open', '')
      target.scrollIntoView({ block: 'start' })
      target.focus({ preventScroll: true })
    }
    // After the heading of the page took the focus.
    let timer = setTimeout(arrive, 0)
    const later = () => {
      clearTimeout(timer)
      timer = setTimeout(arrive, 0)
    }
    // The router changes the address without the browser's own event.
    for (const event of ['hashchange', 'pushState']) addEventListener(event, later)
    return () => {
      clearTimeout(timer)
      for (const event of ['hashchange', 'pushState']) removeEventListener(event, later)
    }
  }, [])
  return null
}
