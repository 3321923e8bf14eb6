import type { Side } from '#core/animal/species.ts'
import { affectedEars } from '#core/chapters/ears.ts'
import type { BodyOf, Case, Line } from '#core/journal/fold.ts'
import { isOfEar, type OperationOnFile, operationsOf } from '#core/owed/operations.ts'
import { animalFacts } from './animal-facts.ts'
import type { ChoiceContent } from './choice-rule.ts'
import type { EarFact, EarFacts, FactValue } from './ear-fact.ts'
import { known, lastAnswer, onFile, unknown } from './fact.ts'
import { recordFacts } from './record-facts.ts'

type Looks = readonly Line<BodyOf<'ear-findings'>>[]
type Scan = { readonly id: string; readonly said: NonNullable<BodyOf<'imaging'>['LEFT']> }

/**
 * What the case says of one ear, as the rules ask it. Of each thing the latest answer counts that was one. After an
 * operation only what was seen since then describes the ear.
 *
 * @example earFactsOf(file.theCase, 'LEFT', choiceContent)['bulla-filled'].value // 'unknown' while nobody scanned it
 * Reference: the kinds ear-findings, imaging, baseline, skin-plan, medicine-before, history-item, cytology, specimen.
 */
export function earFactsOf(theCase: Case, side: Side, content: Pick<ChoiceContent, 'steroids' | 'cockers'>): EarFacts {
  const done = operationsOf({ theCase }).filter((one) => one.done && one.side === side)
  const since = done.at(-1)?.done?.moment.at ?? ''
  const looks = theCase.live('ear-findings').filter((line) => isOfEar(line, side) && line.at > since)
  const scans = theCase.live('imaging').flatMap(({ header, at, body }): Scan[] => {
    const said = body[side]
    return said && at > since ? [{ id: header.id, said }] : []
  })
  return {
    ...animalFacts(theCase, side, content),
    ...recordFacts(theCase, side, { content, done }),
    ...canalFacts(looks, scans, done),
    ...bullaFacts(scans),
    ...massFacts(looks, scans),
    'jaw-pain': jawPain(theCase, looks),
    pain: lastAnswer(looks, ({ painOnPressing }) => painOnPressing),
    'swelling-or-tract': swelling(theCase, side, looks, since),
    'erect-ear': lastAnswer(looks, ({ flapCarriage }) =>
      flapCarriage === 'not-assessed' ? flapCarriage : flapCarriage === 'erect' ? 'yes' : 'no',
    ),
    'both-ears-ill': bothIll(theCase, side),
  }
}

const marked = new Set(['severe', 'closed'])

function canalFacts(looks: Looks, scans: readonly Scan[], done: readonly OperationOnFile[]) {
  const seen = lastThat(looks, ({ stenosis }) => stenosis !== 'not-assessed' && stenosis !== 'could-not-see')
  const canSee = lastThat(looks, ({ drum }) => drum === 'intact' || drum === 'ruptured')
  const feel = lastThat(looks, ({ canalFeel }) => canalFeel !== 'not-assessed')
  const scanned = scans.findLast(({ said }) => said.canalMineral !== 'not-assessed')
  const stenosis = seen?.body.stenosis
  const isMarked = stenosis !== undefined && marked.has(stenosis)
  const hard = feel?.body.canalFeel === 'bone-hard'
  // A soft feel does not rule mineral out deeper down: only a report does.
  const mineral: EarFact =
    hard && feel
      ? known('yes', feel.header.id)
      : scanned
        ? known(scanned.said.canalMineral === 'yes' ? 'yes' : 'no', scanned.id)
        : unknown
  // Whoever saw the drum through an open canal has seen the horizontal part; nothing else on record judges it.
  const horizontal: EarFact = isMarked
    ? known('no', seen?.header.id)
    : canSee && (stenosis === 'none' || stenosis === 'mild')
      ? known('yes', canSee.header.id, seen?.header.id)
      : unknown
  const ill = isMarked || stenosis === 'moderate' || hard || feel?.body.canalFeel === 'thick' || mineral.value === 'yes'
  const healthy: EarFact = ill
    ? known('no', seen?.header.id, feel?.header.id, ...mineral.from)
    : stenosis === 'none' && feel?.body.canalFeel === 'soft'
      ? known('yes', seen?.header.id, feel.header.id)
      : unknown
  const out = done.find(({ procedure }) => procedure === 'teca-lbo')
  return {
    'stenosis-marked': seen ? known(isMarked ? 'yes' : 'no', seen.header.id) : unknown,
    'canal-mineral': mineral,
    'horizontal-open': horizontal,
    'canal-healthy': healthy,
    'canal-removed': out ? known('yes', out.done?.by) : seen ? known('no', seen.header.id) : unknown,
    'drum-lost': lastAnswer(looks, ({ drum }) =>
      drum === 'ruptured' ? 'yes' : drum === 'intact' ? 'no' : 'not-assessed',
    ),
  }
}

function bullaFacts(scans: readonly Scan[]) {
  const content = scans.findLast(({ said }) => said.bulla !== 'not-reported')
  const wall = scans.findLast(({ said }) => said.bullaWall !== 'not-reported')
  const of = (scan: Scan | undefined, is: boolean) => (scan ? known(is ? 'yes' : 'no', scan.id) : unknown)
  return {
    'bulla-filled': of(content, content?.said.bulla === 'filled'),
    'bulla-wall-changed': of(wall, wall?.said.bullaWall !== 'normal'),
    'bulla-wall-eaten': of(wall, wall?.said.bullaWall === 'eaten-away'),
  }
}

/** A mass that one look found is there; that there is none needs a scan, or an eye that saw the whole canal. */
function massFacts(looks: Looks, scans: readonly Scan[]) {
  const look = lastThat(looks, ({ mass }) => mass !== 'not-assessed')
  const scan = scans.findLast(({ said }) => said.mass !== 'not-assessed')
  const found = [
    ...(scan?.said.mass === 'yes' ? [{ id: scan.id, ...scan.said }] : []),
    ...(look?.body.mass === 'yes' ? [{ id: look.header.id, ...look.body }] : []),
  ]
  const sawAll = look?.body.mass === 'no' && (look.body.drum === 'intact' || look.body.drum === 'ruptured')
  const none = found.length > 0 ? [] : [...(scan ? [scan.id] : []), ...(sawAll && look ? [look.header.id] : [])]
  const placed = found.find(({ massPlace }) => massPlace !== 'not-assessed' && massPlace !== 'not-reported')
  const sized = found.find(({ massSize }) => massSize !== 'not-assessed' && massSize !== 'not-reported')
  const part = (of: { readonly id: string } | undefined, is: boolean): EarFact =>
    none.length > 0 ? known('no', ...none) : of ? known(is ? 'yes' : 'no', of.id) : unknown
  const place = placed?.massPlace
  return {
    mass:
      found.length > 0 ? known('yes', ...found.map(({ id }) => id)) : none.length > 0 ? known('no', ...none) : unknown,
    'mass-outer': part(placed, place === 'opening' || place === 'vertical'),
    'mass-deep': part(placed, place === 'bend' || place === 'horizontal' || place === 'bulla'),
    'mass-small': part(sized, sized?.massSize === 'small'),
  }
}

function jawPain(theCase: Case, looks: Looks): EarFact {
  const assessed = theCase.live('anaesthetic-assessment').findLast(({ body }) => body.jawOpens !== 'not-assessed')
  if (assessed && assessed.body.jawOpens !== 'yes') return known('yes', assessed.header.id)
  const called = theCase.latest('referral')
  const said = called?.body.signs.find(({ sign }) => sign === 'mouth-will-not-open')
  if (called && said?.answer === 'yes') return known('yes', called.header.id)
  return lastAnswer(looks, ({ painOnJawOpening }) => painOnJawOpening)
}

/** Either of the two is enough; that there is neither needs both looked for. */
function swelling(theCase: Case, side: Side, looks: Looks, since: string): EarFact {
  const late = theCase.live('late-event').filter((line) => isOfEar(line, side) && line.at > since)
  const event = late.findLast(({ body }) => ['swelling', 'abscess', 'draining-tract'].includes(body.what))
  if (event) return known('yes', event.header.id)
  const look = lastThat(looks, (body) => body.swelling !== 'not-assessed' || body.drainingTract !== 'not-assessed')
  if (!look) return unknown
  const answers: FactValue[] = [look.body.swelling, look.body.drainingTract].map((one) =>
    one === 'not-assessed' ? 'unknown' : one,
  )
  if (answers.includes('yes')) return known('yes', look.header.id)
  return answers.includes('unknown') ? unknown : known('no', look.header.id)
}

/** The other ear is not ill only once somebody looked into it and the case is not about it. */
function bothIll(theCase: Case, side: Side): EarFact {
  if (affectedEars(theCase).length === 2) return onFile(true)
  const other = theCase.live('ear-findings').findLast((line) => !isOfEar(line, side))
  return other ? known('no', other.header.id) : unknown
}

function lastThat(looks: Looks, is: (body: BodyOf<'ear-findings'>) => boolean) {
  return looks.findLast(({ body }) => is(body))
}
