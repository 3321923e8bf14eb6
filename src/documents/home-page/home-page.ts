import { formulary } from '#content/formulary/index.ts'
import type { OwnerWords } from '#content/languages/owner-words.ts'
import { dosingRules } from '#content/protocols/dosing-rules.ts'
import { homeForClinicInEnglish } from '#content/wording/home.ts'
import { flagsOfHome } from '#core/dosing/flag-home.ts'
import { carerOf } from '#core/home/carer.ts'
import { type HomePlan, homePlanOf } from '#core/home/home-plan.ts'
import { medicineTimes } from '#core/home/medicine-times.ts'
import { type CaseFile, contactNamed, personNamed } from '#core/journal/clinic.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { specimenLoopsOf } from '#core/owed/specimen-loop.ts'
import { sayCalendarDay } from '#core/time/calendar-day.ts'
import type { Moment } from '#core/time/moment.ts'
import { animalOf, earOf, type Operation, operationsOf, paperOf, sayDay } from '../case/case-words.ts'
import { otherLanguageNote, spokenWith, translationNote } from '../case/owner-words.ts'
import { notYet, type PaperDefinition } from '../case/paper-input.ts'
import { findingLines } from '../dose-sheet/plan-tables.ts'
import { type Block, facts, heading, list, paragraph, small, strong } from '../render/model.ts'
import { changedMedicines, coursesToGive, replacesOlder, stillFrom, stoppedUnnamed } from './changed.ts'
import { eyeBlocks } from './eye-care.ts'
import { hygieneBlocks } from './hygiene.ts'
import { medicineBlocks } from './medicines.ts'
import { type Today, todayOf } from './today.ts'

/**
 * The page for the kitchen door, in letters of 14 points. Where one does not hold it, the first holds when to phone,
 * tonight, the next visit and the medicines, and the rest follows: the order of the blocks is that rule.
 */
export const homePage: PaperDefinition = {
  id: 'home-page',
  title: 'Home page for the owner',
  per: 'case',
  of: (input) => {
    const { file } = input
    const animal = animalOf(file)
    const plan = homePlanOf(file.theCase)
    if (!animal) return notYet('no-identity')
    if (!plan) return notYet('not-discharged')
    if (file.theCase.latest('death')) return notYet('dead')
    const spoken = spokenWith(input)
    const said = spoken.words
    const { home: words } = said
    return paperOf(input, {
      id: 'home-page',
      title: fill(words.title, { name: animal.name }),
      print: 'large',
      turnOver: words.turnOver,
      words: said,
      blocks: [
        ...notToBeHandedOut(file),
        ...stoppedUnnamed(plan),
        ...otherLanguageNote(file, spoken),
        ...replacesOlder(file, said),
        ...homeBlocks(file, plan, said, input.on),
        ...translationNote(spoken),
      ],
    })
  },
}

/** Whether a person of the house has to look at the medicines before an owner reads this page. */
export function isHomePageHeld(file: CaseFile, plan: HomePlan): boolean {
  return notToBeHandedOut(file).length > 0 || stoppedUnnamed(plan).length > 0
}

/** What the page says to the owner at that moment, without what is for whoever hands it out. */
export function homeBlocks(file: CaseFile, plan: HomePlan, said: OwnerWords, on: Moment): Block[] {
  const { body } = plan.discharge
  const { home: words } = said
  const today = todayOf(on, plan, file)
  const operations = operationsOf(file).filter(({ done }) => done !== null)
  const since = stillFrom(plan, file, today)
  const courses = coursesToGive(plan, file, since)
  const isGiven = courses.some(
    (course) => course.untilSaid || (medicineTimes(course, file.clinic.zone).lastDose?.at ?? '') >= (since ?? ''),
  )
  return [
    ...operatedEars(operations, said),
    phoneNow(file, said),
    warningSign(operations, said),
    ...changedMedicines(plan, file, said, today),
    ...(today.isFirst ? [heading(1, words.tonight), list(words.tonightItems.value)] : []),
    heading(1, words.next),
    paragraph(nextVisit(body.nextVisit, today, said)),
    heading(1, words.medicines),
    ...medicineBlocks(courses, file.clinic.zone, said, { none: noneToGive(plan, said), since }),
    ...(isGiven ? [paragraph(`${words.forgotten} ${words.noHumanMedicine}`)] : []),
    ...eyeBlocks(
      file,
      operations,
      { ...eyeCareOf(plan, said, today), from: plan.discharge.at, inTable: isGiven },
      said,
    ),
    ...hygieneBlocks(file, said),
    heading(1, words.collar),
    paragraph(collar(body.collarUntil, today, said)),
    facts(
      ...stitches(file, operations, plan, said),
      [words.eating, asWritten(body.food, plan, said, today)],
      [words.rest, asWritten(body.rest, plan, said, today)],
    ),
    ...caredForBy(file, plan, said),
    ...waitingFor(file, said),
    ...taught(file, body, said),
  ]
}

function noneToGive({ courses, changes }: HomePlan, { home, homeChange }: OwnerWords): string {
  return courses.length === 0 && changes.length === 0 ? home.noMedicines : homeChange.noneLeft
}

function nextVisit(day: string | null, today: Today, { home: words, dates }: OwnerWords): string {
  if (day === null) return words.nextNone
  return fill(day < today.day ? words.nextWas : words.nextOn, { date: sayCalendarDay(day, dates) })
}

function collar(until: string, today: Today, { home: words, dates }: OwnerWords): string {
  const about = { date: sayCalendarDay(until, dates) }
  return until < today.day ? fill(words.collarWas, about) : `${fill(words.collarUntil, about)} ${words.collarWhy}`
}

/** What a person wrote for the way home is theirs to end: on later days it is said when it was written. */
function asWritten(text: string, { discharge }: HomePlan, { home: words, dates }: OwnerWords, today: Today): string {
  if (today.isFirst) return text
  return fill(words.written, { date: sayDay(discharge.header.happenedAt, dates), text })
}

/** Said until somebody saw that they are out. */
function stitches(
  { theCase }: CaseFile,
  operations: readonly Operation[],
  { discharge }: HomePlan,
  { home: words }: OwnerWords,
): (readonly [string, string])[] {
  const areOut = operations.every(({ side }) => {
    const seen = theCase
      .live('check')
      .findLast((line) => earOf(line) === side && line.at >= discharge.at && line.body.sutures !== 'not-assessed')
    return seen?.body.sutures === 'out' || (seen?.body.sutures === 'none' && seen.body.wound === 'closed')
  })
  return operations.length > 0 && areOut ? [] : [[words.wound, words.sutures[discharge.body.sutures]]]
}

const knowledge = { drugs: formulary, rules: dosingRules, plans: [], policies: [] }

/** The page is written whatever the medicines are; when a check has something against them, the clinic reads it first. */
function notToBeHandedOut({ theCase, clinic }: CaseFile): Block[] {
  const flags = flagsOfHome(theCase, clinic.zone, knowledge)
  if (flags.length === 0) return []
  const lines = [homeForClinicInEnglish.notYet, ...findingLines(flags)]
  return [{ kind: 'callout', tone: 'stop', word: homeForClinicInEnglish.notYetWord, lines }]
}

function operatedEars(operations: readonly Operation[], { home: words, papers, dates }: OwnerWords): Block[] {
  const said = operations.map(({ side, moment }) =>
    fill(words.operatedValue, { side: papers.sides[side], date: sayDay(moment, dates) }),
  )
  return said.length === 0 ? [] : [paragraph([strong(`${words.operated}: ${said.join('; ')}`)])]
}

export function phoneNow(file: CaseFile, { home: words, papers }: OwnerWords): Block {
  const { phone, outOfHoursPhone } = file.clinic
  const night = outOfHoursPhone ?? papers.notRecorded
  const numbers = fill(words.phones, { phone, night })
  const lines = [[strong(numbers)]]
  return { kind: 'callout', tone: 'stop', word: words.phoneNow, lines, items: words.phoneNowItems.value }
}

/** The sign changes only where the canal is gone. */
function warningSign(operations: readonly Operation[], { home: words, papers }: OwnerWords): Block {
  const gone = operations.some(({ procedure }) => procedure === 'teca-lbo')
  return {
    kind: 'callout',
    tone: 'attention',
    word: gone ? words.newSignWord : papers.pleaseNote,
    lines: [gone ? words.newSign : words.newSignKept],
  }
}

/** As the discharge says it, and what to do where it says nothing. */
function eyeCareOf(plan: HomePlan, said: OwnerWords, today: Today) {
  const { eyeCare } = plan.discharge.body
  const { eyeCareMissing, eyeCareMissingAtHome } = said.home
  return {
    written: eyeCare && asWritten(eyeCare, plan, said, today),
    missing: today.isFirst ? eyeCareMissing : eyeCareMissingAtHome,
  }
}

/** Printed, so that whoever holds the page sees whether the one who gives the medicines has it too. */
function caredForBy(file: CaseFile, plan: HomePlan, { home: words }: OwnerWords): Block[] {
  const carer = carerOf(plan, file.theCase)
  if (!carer) return []
  const about = { person: contactNamed(file, carer.contact) }
  return [facts([words.carer, fill(carer.by ? words.carerHas : words.carerHasNot, about)])]
}

/** Specimens of which a result is still to come, or has come and the owner has not been told. */
function waitingFor(file: CaseFile, { home: words, dates }: OwnerWords): Block[] {
  const open = specimenLoopsOf(file.theCase).flatMap(({ specimen, reports, answered }) => {
    const isWaiting = Object.values(answered).includes(null) || reports.some(({ told }) => told.owner === null)
    return isWaiting ? [specimen] : []
  })
  if (open.length === 0) return []
  const byDay = new Map<string, Set<string>>()
  for (const { header, body } of open) {
    const date = sayDay(header.happenedAt, dates)
    byDay.set(date, new Set([...(byDay.get(date) ?? []), ...body.tests.map((test) => words.tests[test])]))
  }
  const said = [...byDay].map(([date, tests]) =>
    capital(fill(words.waitingItem, { tests: [...tests].join(', '), date })),
  )
  return [facts([words.waiting, [...said, words.weWillPhone].join(' ')])]
}

function taught(
  file: CaseFile,
  { taught: items, taughtBy }: BodyOf<'discharge'>,
  { home: words, papers }: OwnerWords,
): Block[] {
  const answers = [...new Set(items.map(({ answer }) => answer))]
  const said = answers.map((given) => {
    const these = items.filter(({ answer }) => answer === given).map(({ item }) => words.taughtItems[item])
    return `${these.join(', ')} (${words.taughtAnswers[given]})`
  })
  const about = { person: personNamed(file, taughtBy), items: said.join('; ') || papers.notRecorded }
  return [paragraph([small(fill(words.taughtBy, about))])]
}
