import { contactNamed } from '#core/journal/clinic.ts'
import type { Draft, OwedItem } from './owed-item.ts'
import { dueWithin } from './results.ts'
import type { Setting } from './setting.ts'

/** What somebody of the house writes once an answer of the practice was read. */
const readings = ['note', 'call', 'told', 'check', 'medicine-change', 'late-event', 'twelve-months'] as const

/**
 * What the referring practice sent through its link waits for an eye; the newest of one practice stands for those before
 * it. A death that it tells is confirmed by a person of the house first: until then nothing ends.
 */
export function owedAfterVetAnswers(setting: Setting): Draft[] {
  const { rules, zone, revision, file } = setting
  const sent = file.theCase.live('vet-answer').flatMap((line) => {
    const { author } = line.header
    return author.kind === 'referring-vet' ? [{ line, contact: author.contact }] : []
  })
  const newest = new Map(sent.map((one) => [one.contact, one]))
  const to = (what: 'vet-answer-to-read' | 'vet-death-to-confirm', { line, contact }: (typeof sent)[number]) => {
    const within = what === 'vet-answer-to-read' ? rules.vetAnswerReadWithin : rules.vetDeathConfirmedWithin
    const about = { vet: contactNamed(file, contact), by: line.body.examinedBy }
    const item: OwedItem = {
      ...dueWithin(line.at, within, zone),
      id: `${what}:${line.header.id}`,
      what,
      about: {},
      who: 'surgeon',
      person: null,
      way: what === 'vet-answer-to-read' ? 'task' : 'call',
      side: null,
      operation: null,
      why: [{ code: what === 'vet-answer-to-read' ? 'vet-answered' : 'vet-told-death', about }],
      facts: [within],
      withOwner: true,
      revision,
    }
    return item
  }
  const answers = [...newest.values()].map((one): Draft => {
    const item = to('vet-answer-to-read', one)
    const read = readings
      .flatMap((kind) => file.theCase.live(kind).map(({ at, header }) => ({ at, header })))
      .filter(({ at, header }) => at > one.line.at && header.author.kind === 'person')
      .sort((a, b) => (a.at < b.at ? -1 : 1))[0]
    if (!read) return { item, ended: null }
    return { item, ended: { because: read.at > item.dueBy ? 'settled-late' : 'settled', by: read.header.id } }
  })
  // Written down, a death settles both: what is with the owner ends with it.
  const deaths = sent
    .filter(({ line }) => line.body.saysDied)
    .slice(-1)
    .map((one): Draft => ({ item: to('vet-death-to-confirm', one), ended: null }))
  return [...answers, ...deaths]
}
