import { procedures } from '#content/procedures/index.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { agreementWords as words } from '#content/wording/papers-agreement.ts'
import { isBound } from '#core/agreement/fingerprint.ts'
import { sayMoney } from '#core/agreement/money.ts'
import { type CaseFile, contactNamed, personNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { type ConsentItem, procedureNamed } from '#core/procedures/procedure.ts'
import { animalOf, paperOf, whenOf } from '../case/case-words.ts'
import { notYet, type PaperDefinition } from '../case/paper-input.ts'
import { drawingPictures } from '../plate/plate-picture.ts'
import { type Block, facts, heading, paragraph, small, strong } from '../render/model.ts'

type Agreement = BodyOf<'agreement'>

/** The agreement as it was given, with the mark that binds it to its plan. */
export const agreementSheet: PaperDefinition = {
  id: 'agreement-sheet',
  title: 'What was agreed',
  per: 'case',
  of: (input) => {
    const { file } = input
    const animal = animalOf(file)
    const agreement = file.theCase.latest('agreement')
    if (!animal) return notYet('no-identity')
    if (!agreement) return notYet('not-agreed')
    const { body } = agreement
    const owner = contactNamed(file, body.consentBy)
    const person = personNamed(file, body.explainedBy)
    return paperOf(input, {
      id: 'agreement-sheet',
      title: fill(words.title, { name: animal.name }),
      blocks: [
        heading(1, words.plan),
        planFacts(file, body),
        ...mark(body),
        heading(1, words.costs),
        costFacts(body),
        heading(1, words.limits),
        facts(
          [words.resuscitate, words.resuscitateValue[body.resuscitate]],
          [words.mayExtend, words.mayExtendValue[body.plan.mayExtend]],
          [words.photographs, words.photographsValue[body.photographs]],
        ),
        heading(1, words.told),
        paragraph([small(words.toldWhy)]),
        paragraph(consentItemsOf(body).map(boxed).join('\n')),
        ...drawnBefore(file, agreement),
        heading(1, words.taught),
        taughtBack(body),
        facts(
          [words.explainedBy, person],
          [
            words.consentBy,
            fill(words.consentValue, {
              name: owner,
              authority: words.authority[body.authority],
              date: whenOf(agreement),
            }),
          ],
        ),
        ...mayAgree(file, body),
        {
          kind: 'signatures',
          lines: [fill(words.signatures.owner, { name: owner }), fill(words.signatures.vet, { person })],
        },
      ],
    })
  },
}

/** What was drawn for the owner on the ears of this plan, up to the moment it was agreed. */
function drawnBefore(file: CaseFile, { at, body }: Pick<Line<Agreement>, 'at' | 'body'>): Block[] {
  const pictures = body.plan.ears.flatMap(({ side }) =>
    drawingPictures(file, side, ({ drawnFor }, drawnAt) => drawnFor === 'owner' && drawnAt <= at),
  )
  return pictures.length === 0 ? [] : [heading(1, words.drawn), ...pictures]
}

function planFacts(file: CaseFile, { plan }: Agreement): Block {
  return facts(
    ...plan.ears.map(
      ({ side, procedure }) =>
        [
          fill(words.ear, { side: papersInEnglish.sides[side] }),
          [strong(procedureNamed(procedure, procedures).name)],
        ] as const,
    ),
    [words.surgeon, personNamed(file, plan.surgeon)],
    [words.leaflet, plan.leaflet],
    [words.language, plan.language],
  )
}

/** The first sixteen signs are enough to compare by eye; the whole is in the record. */
function mark(body: Agreement): Block[] {
  const { fingerprint } = body
  const holds = isBound(body)
  const short = (fingerprint.slice(0, 16).match(/.{4}/g) ?? []).join(' ')
  return [
    facts([words.fingerprint, short]),
    paragraph([small(words.fingerprintWhy)]),
    ...(holds ? [] : [{ kind: 'callout', tone: 'stop', word: words.changedWord, lines: [words.changed] } as const]),
  ]
}

function costFacts({ estimate, plan }: Agreement): Block {
  const about = { low: sayMoney(estimate.low), high: sayMoney(estimate.high) }
  return facts([words.estimate, fill(words.estimateValue, about)], [words.ceiling, [strong(sayMoney(plan.ceiling))]])
}

/** What must be talked over for the operations of this plan, each once. */
function consentItemsOf({ plan }: Agreement) {
  return [...new Set(plan.ears.flatMap(({ procedure }) => procedureNamed(procedure, procedures).consentItems))]
}

function taughtBack({ teachBack }: Agreement): Block {
  if (teachBack.length === 0) return paragraph(papersInEnglish.notRecorded)
  return facts(...teachBack.map(({ item, answer }) => [words.taughtItems[item], words.taughtAnswers[answer]] as const))
}

function boxed(item: ConsentItem): string {
  return fill(words.box, { item: words.toldItems[item] })
}

/** Somebody the household does not name as able to consent is pointed out, never refused after the fact. */
function mayAgree(file: CaseFile, { consentBy }: Agreement): Block[] {
  const contacts = file.theCase.latest('household')?.body.contacts ?? []
  if (contacts.some(({ contact, mayConsent }) => contact === consentBy && mayConsent)) return []
  return [{ kind: 'callout', tone: 'attention', word: words.mayNotWord, lines: [words.mayNot] }]
}
