import { procedures } from '#content/procedures/index.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { reportInEnglish as words } from '#content/wording/report.ts'
import { troubleInEnglish } from '#content/wording/trouble.ts'
import { type CaseFile, personNamed } from '#core/journal/clinic.ts'
import { isAbout, linesAbout } from '#core/journal/lines-about.ts'
import { fill } from '#core/outcome/finding.ts'
import { layers } from '#core/plate/parameters.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { type Moment, minutesBetween, sayMoment } from '#core/time/moment.ts'
import { type Operation, operationOf, paperOf } from '../case/case-words.ts'
import { notYet, type PaperDefinition } from '../case/paper-input.ts'
import { troubleLines } from '../case/trouble-lines.ts'
import { drawingPictures, platePicture } from '../plate/plate-picture.ts'
import { type Block, facts, heading, list, paragraph } from '../render/model.ts'
import { countBlocks } from './counts.ts'
import { courseTable } from './course.ts'
import { drugBlocks } from './drugs.ts'
import { emergencyBlocks } from './emergencies.ts'
import { lossBlocks } from './loss.ts'
import { sampleBlocks } from './samples.ts'
import { signOutBlocks } from './sign-out.ts'
import { signedState } from './signed-state.ts'

/** What was done, drafted from the stamps. The side stands in words in every heading; gaps stay gaps. */
export const operationReport: PaperDefinition = {
  id: 'operation-report',
  title: 'Operation report',
  per: 'operation',
  of: (input) => {
    const { file } = input
    const operation = operationOf(input)
    if (!operation) return notYet('no-operation')
    const { theCase } = file
    const stamped = linesAbout(theCase, 'theatre-stamp', operation.id).length > 0
    if (!stamped && !operation.summary) return notYet('not-operated')
    const side = papersInEnglish.sides[operation.side]
    const procedure = procedureNamed(operation.procedure, procedures)
    const titled = (key: keyof typeof words.headings) => heading(1, fill(words.headings[key], { side }))
    return paperOf(input, {
      id: 'operation-report',
      title: fill(words.title, { side }),
      blocks: [
        ...signedState(file, operation),
        titled('operation'),
        operationFacts(file, operation, procedure.name),
        ...plates(file, operation),
        titled('course'),
        courseTable(theCase, operation.id, procedure),
        titled('emergencies'),
        ...emergencyBlocks(theCase, operation.id, procedure),
        titled('drugs'),
        ...drugBlocks(file, [operation.id]),
        titled('loss'),
        ...lossBlocks(file, operation),
        titled('counts'),
        ...countBlocks(theCase, operation.id),
        titled('samples'),
        ...sampleBlocks(theCase, operation.id),
        titled('signOut'),
        ...signOutBlocks(file, operation.id),
        titled('after'),
        endFacts(operation),
        ...troubleSince(file, operation),
        { kind: 'signatures', lines: [fill(words.signature, { person: personNamed(file, operation.surgeon) })] },
      ],
    })
  },
}

/** The arteries stay off: the report draws what was found and done. */
const plateLayers = layers.filter((layer) => layer !== 'carotid-branch')

/** The ear as it was found and as it was left, drawn from the entries alone; then what somebody drew on it. */
function plates(file: CaseFile, { id, side }: Operation): Block[] {
  const { theCase } = file
  const drawn = (show: 'as-found' | 'as-left') =>
    platePicture(
      theCase,
      side,
      { view: 'transverse', show, operation: id, layers: plateLayers },
      fill(words.plates[show], { side: papersInEnglish.sides[side] }),
    )
  return [...drawn('as-found'), ...drawn('as-left'), ...drawingPictures(file, side)]
}

/** What was noticed in or since the operation, as far as it is on record when the report is printed. */
function troubleSince(file: CaseFile, { id, side }: Operation): Block[] {
  const lines = troubleLines(file, id)
  if (lines.length === 0) return []
  return [
    heading(1, fill(words.headings.trouble, { side: papersInEnglish.sides[side] })),
    list(lines),
    paragraph(troubleInEnglish.paper.lead),
  ]
}

function operationFacts(file: CaseFile, operation: Operation, name: string): Block {
  const { terms } = words
  const body = operation.summary?.body
  const stampAt = (id: string) =>
    file.theCase
      .live('theatre-stamp')
      .find((line) => isAbout(line, operation.id) && line.body.checkpoint === id && line.body.answer === 'done')?.header
      .happenedAt
  const incision = body?.incisionAt ?? stampAt('incision')
  const closed = body?.closedAt ?? stampAt('closed')
  const person = (id: string | null | undefined) => (id ? personNamed(file, id) : papersInEnglish.notRecorded)
  return facts(
    [terms.operation, name],
    [terms.side, [{ kind: 'strong', text: papersInEnglish.sides[operation.side] }]],
    [terms.surgeon, person(operation.surgeon)],
    [terms.assistant, body && body.assistant === null ? words.none : person(body?.assistant)],
    [terms.anaesthetist, person(operation.anaesthetist)],
    [terms.incision, said(incision)],
    [terms.closed, said(closed)],
    [terms.duration, lasted(incision, closed)],
    [terms.indication, body?.indication ?? papersInEnglish.notRecorded],
    [terms.findings, body?.findings ?? papersInEnglish.notRecorded],
  )
}

function said(moment: Moment | undefined): string {
  return moment ? sayMoment(moment) : papersInEnglish.notRecorded
}

function lasted(incision: Moment | undefined, closed: Moment | undefined): string {
  if (!incision || !closed) return papersInEnglish.notKnown
  return fill(words.minutes, { minutes: String(Math.round(minutesBetween(incision, closed))) })
}

function endFacts({ summary }: Operation): Block {
  const { terms } = words
  if (!summary) {
    const missing = papersInEnglish.notRecorded
    return facts([terms.complications, missing], [terms.drain, missing], [terms.plan, missing])
  }
  const { complications, drain, plan, remark } = summary.body
  return facts(
    [terms.complications, complications.map((code) => words.complications[code]).join(', ') || words.none],
    [terms.drain, words.drain[drain ? 'yes' : 'no']],
    [terms.plan, plan],
    ...(remark === null ? [] : [[terms.remark, remark] as const]),
  )
}
