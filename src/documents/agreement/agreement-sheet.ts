import type { OwnerWords } from '#content/languages/owner-words.ts'
import { procedures } from '#content/procedures/index.ts'
import { isBound } from '#core/agreement/fingerprint.ts'
import { sayMoney } from '#core/agreement/money.ts'
import { type CaseFile, contactNamed, personNamed } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { type ConsentItem, procedureNamed } from '#core/procedures/procedure.ts'
import { animalOf, paperOf, whenOf } from '../case/case-words.ts'
import { otherLanguageNote, spokenWith, translationNote } from '../case/owner-words.ts'
import { notYet, type PaperDefinition } from '../case/paper-input.ts'
import { drawingPictures } from '../plate/plate-picture.ts'
import { type Block, facts, heading, paragraph, small, strong } from '../render/model.ts'
import { howGiven, isSignedHere, mayAgree, notAsAgreed, numbersTold, signed } from './consent-blocks.ts'

type Agreement = BodyOf<'agreement'>
type Said = OwnerWords['agreement']

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
    const spoken = spokenWith(input)
    const { agreement: words, dates, papers } = spoken.words
    const owner = contactNamed(file, body.consentBy)
    const person = personNamed(file, body.explainedBy)
    return paperOf(input, {
      id: 'agreement-sheet',
      title: fill(words.title, { name: animal.name }),
      words: spoken.words,
      blocks: [
        ...otherLanguageNote(file, spoken),
        heading(1, words.plan),
        planFacts(file, body, spoken.words),
        ...mark(body, words),
        ...notAsAgreed(file, agreement, spoken.words),
        heading(1, words.costs),
        costFacts(body, words),
        heading(1, words.limits),
        facts(
          [words.resuscitate, words.resuscitateValue[body.resuscitate]],
          [words.mayExtend, words.mayExtendValue[body.plan.mayExtend]],
          ...(body.plan.extension === null ? [] : [[words.extension, body.plan.extension] as const]),
          [words.photographs, words.photographsValue[body.photographs]],
        ),
        heading(1, words.told),
        paragraph([small(words.toldWhy)]),
        paragraph(
          consentItemsOf(body)
            .map((item) => boxed(item, words))
            .join('\n'),
        ),
        ...drawnBefore(file, agreement, spoken.words),
        ...numbersTold(body, spoken),
        heading(1, words.taught),
        taughtBack(body, spoken.words),
        facts(
          [words.explainedBy, person],
          [
            words.consentBy,
            fill(words.consentValue, {
              name: owner,
              authority: words.authority[body.authority],
              date: whenOf(agreement, dates),
            }),
          ],
          ...howGiven(file, body, spoken.words),
        ),
        ...mayAgree(file, agreement, words),
        ...signed(file, agreement, spoken.words),
        {
          kind: 'signatures',
          date: papers.signedOn,
          lines: [
            ...(isSignedHere(body) ? [] : [fill(words.signatures.owner, { name: owner })]),
            fill(words.signatures.vet, { person }),
          ],
        },
        ...translationNote(spoken),
      ],
    })
  },
}

/** What was drawn for the owner on the ears of this plan, up to the moment it was agreed. */
function drawnBefore(file: CaseFile, { at, body }: Pick<Line<Agreement>, 'at' | 'body'>, words: OwnerWords): Block[] {
  const pictures = body.plan.ears.flatMap(({ side }) =>
    drawingPictures(file, side, ({ drawnFor }, drawnAt) => drawnFor === 'owner' && drawnAt <= at, words),
  )
  return pictures.length === 0 ? [] : [heading(1, words.agreement.drawn), ...pictures]
}

function planFacts(file: CaseFile, { plan }: Agreement, { agreement: words, procedures: named }: OwnerWords): Block {
  return facts(
    ...plan.ears.map(
      ({ side, procedure }) => [fill(words.ear, { side: words.sides[side] }), [strong(named[procedure])]] as const,
    ),
    [words.surgeon, personNamed(file, plan.surgeon)],
    [words.leaflet, plan.leaflet],
    [words.language, plan.language],
  )
}

/** The first sixteen signs are enough to compare by eye; the whole is in the record. */
function mark(body: Agreement, words: Said): Block[] {
  const { fingerprint } = body
  const holds = isBound(body)
  const short = (fingerprint.slice(0, 16).match(/.{4}/g) ?? []).join(' ')
  return [
    facts([words.fingerprint, short]),
    paragraph([small(words.fingerprintWhy)]),
    ...(holds ? [] : [{ kind: 'callout', tone: 'stop', word: words.changedWord, lines: [words.changed] } as const]),
  ]
}

function costFacts({ estimate, plan }: Agreement, words: Said): Block {
  const about = { low: sayMoney(estimate.low), high: sayMoney(estimate.high) }
  return facts([words.estimate, fill(words.estimateValue, about)], [words.ceiling, [strong(sayMoney(plan.ceiling))]])
}

/** What must be talked over for the operations of this plan, each once. */
function consentItemsOf({ plan }: Agreement) {
  return [...new Set(plan.ears.flatMap(({ procedure }) => procedureNamed(procedure, procedures).consentItems))]
}

/** The first answer, what was said, and how it went after it was explained again. */
function taughtBack({ teachBack }: Agreement, { agreement: words, papers }: OwnerWords): Block {
  if (teachBack.length === 0) return paragraph(papers.notRecorded)
  return facts(
    ...teachBack.map(({ item, answer, said, again }) => {
      const parts = [
        words.taughtAnswers[answer],
        ...(said === null ? [] : [fill(words.taughtSaid, { said })]),
        ...(again === null ? [] : [fill(words.taughtAgain, { answer: words.taughtAnswers[again] })]),
      ]
      return [words.taughtItems[item], parts.join('; ')] as const
    }),
  )
}

function boxed(item: ConsentItem, words: Said): string {
  return fill(words.box, { item: words.toldItems[item] })
}
