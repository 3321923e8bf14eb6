import type { Side } from '#core/animal/species.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { isOfEar, type OperationOnFile } from '#core/owed/operations.ts'
import type { ChoiceContent } from './choice-rule.ts'
import type { EarFact } from './ear-fact.ts'
import { known, onFile, unknown } from './fact.ts'

type Topic = BodyOf<'history-item'>['topic']
type Around = { readonly content: Pick<ChoiceContent, 'steroids'>; readonly done: readonly OperationOnFile[] }

/** What is on record about this ear, or about the animal without naming the other ear: history, medicines, results. */
export function recordFacts(theCase: Case, side: Side, { content, done }: Around) {
  const history = theCase.live('history-item').filter((line) => mayBeOf(line, side))
  const medicines = theCase.live('medicine-before').filter((line) => mayBeOf(line, side))
  const steroids = medicines.filter(({ body }) => body.substance !== null && content.steroids.includes(body.substance))
  const scan = theCase
    .live('imaging')
    .findLast(({ body }) => (body.modality === 'CT' || body.modality === 'MRI') && body[side] !== null)
  const smear = theCase.live('cytology').filter((line) => isOfEar(line, side))
  const choice = theCase.live('choice').findLast((line) => isOfEar(line, side))
  const own = done.map((one) => one.done?.by ?? one.id)
  return {
    'operated-before': own.length > 0 ? known('yes', ...own) : written(history, 'earlier-ear-surgery'),
    injured: written(history, 'ear-injury'),
    'closed-from-birth': written(history, 'closed-from-birth'),
    'history-taken': history.length > 0 ? known('yes', ...history.map(({ header }) => header.id)) : unknown,
    'medicine-failed': failed(medicines),
    'steroid-failed': failed(steroids),
    'odd-cells': oddCells(smear),
    'advanced-imaging': onFile(scan !== undefined, ...(scan ? [scan.header.id] : [])),
    'cytology-read': onFile(smear.length > 0, ...smear.map(({ header }) => header.id)),
    'tissue-result': result(theCase, side, ({ site, tests }) => tests.includes('histology') && site !== 'node'),
    'node-result': result(theCase, side, ({ site }) => site === 'node'),
    'culture-result': result(theCase, side, ({ tests }) => tests.some((test) => test.endsWith('-culture'))),
    'session-decided': onFile(choice !== undefined && choice.body.session !== 'not-decided'),
  }
}

function mayBeOf(line: Pick<Line, 'header'>, side: Side): boolean {
  return line.header.subject.kind !== 'ear' || isOfEar(line, side)
}

/** An entry of the history speaks in words, and may say "none": its words are shown for a person to judge. */
function written(history: readonly Line<BodyOf<'history-item'>>[], topic: Topic): EarFact {
  const line = history.findLast(({ body }) => body.topic === topic)
  return line ? { ...known('yes', line.header.id), words: line.body.text } : unknown
}

/** One that helped and none that failed is "no"; a help in part is neither. */
function failed(medicines: readonly Line<BodyOf<'medicine-before'>>[]): EarFact {
  const of = (...effects: readonly string[]) => medicines.filter(({ body }) => effects.includes(body.effect))
  const bad = of('none', 'worse')
  if (bad.length > 0) return known('yes', ...bad.map(({ header }) => header.id))
  const good = of('better')
  return good.length > 0 && of('partly').length === 0 ? known('no', ...good.map(({ header }) => header.id)) : unknown
}

function oddCells(smear: readonly Line<BodyOf<'cytology'>>[]): EarFact {
  const seen = smear.filter(({ body }) => body.oddCells !== 'not-assessed')
  const odd = seen.filter(({ body }) => body.oddCells !== 'none')
  if (odd.length > 0) return known('yes', ...odd.map(({ header }) => header.id))
  return seen.length > 0 ? known('no', ...seen.map(({ header }) => header.id)) : unknown
}

function result(theCase: Case, side: Side, is: (body: BodyOf<'specimen'>) => boolean): EarFact {
  const wanted = new Set(
    theCase.live('specimen').flatMap((line) => (isOfEar(line, side) && is(line.body) ? [line.header.id] : [])),
  )
  const found = theCase.live('specimen-result').filter(({ body }) => wanted.has(body.specimen))
  return onFile(found.length > 0, ...found.map(({ header }) => header.id))
}
