import { incidentNote } from '#content/wording/app-forms/incident-note.ts'
import { signOutInEnglish } from '#content/wording/app-sign-out.ts'
import { reportInEnglish as words } from '#content/wording/report.ts'
import { signOutPoints } from '#content/wording/sign-out-points.ts'
import { authorNamed, type CaseFile } from '#core/journal/clinic.ts'
import { linesAbout } from '#core/journal/lines-about.ts'
import { fill } from '#core/outcome/finding.ts'
import { type SignOutPoint, signOutOf } from '#core/theatre/sign-out.ts'
import { timeOf, whenOf } from '../case/case-words.ts'
import { type Block, list, paragraph, strong } from '../render/model.ts'

/** Whether the operation is signed out, what stands against it, and the incident notes of this operation. */
export function signOutBlocks(file: CaseFile, operation: string): Block[] {
  const { state, stamp, points, unsettled } = signOutOf(file.theCase, operation)
  const explained = points.filter(({ note }) => note !== null)
  const about = stamp ? { at: whenOf(stamp), who: authorNamed(file, stamp.header.author) } : { at: '', who: '' }
  return [
    state === 'signed-out'
      ? paragraph([strong(fill(words.signedOut, about))])
      : {
          kind: 'callout',
          tone: 'stop',
          word: signOutInEnglish.states[state],
          lines: [
            ...(stamp ? [fill(words.signedOutBefore, about)] : []),
            ...(unsettled.length === 0 ? [words.nothingAgainst] : unsettled.map(sayPoint)),
          ],
        },
    ...(explained.length === 0
      ? []
      : [
          paragraph(words.explained),
          list(
            explained.map((point) => `${sayPoint(point)} ${fill(words.because, { why: point.note?.body.text ?? '' })}`),
          ),
        ]),
    ...notes(file, operation),
  ]
}

/** One point with its particulars, as a sentence. */
export function sayPoint({ code, about }: Pick<SignOutPoint, 'code' | 'about'>): string {
  const { whens } = signOutInEnglish
  const when = about.when === 'before' || about.when === 'final' ? whens[about.when] : ''
  return `${fill(signOutPoints[code], { ...about, when })}.`
}

function notes({ theCase }: CaseFile, operation: string): Block[] {
  const all = linesAbout(theCase, 'incident-note', operation)
  if (all.length === 0) return []
  const { what } = incidentNote.fields
  return [
    paragraph([strong(words.incidentNotes)]),
    list(
      all.map((line) => {
        const said = fill(words.incidentNote, { time: timeOf(line), what: what.options[line.body.what] })
        return line.body.text === null ? said : `${said} ${line.body.text}`
      }),
    ),
  ]
}
