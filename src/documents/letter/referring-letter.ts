import { procedures } from '#content/procedures/index.ts'
import { findingWords, letterInEnglish as words } from '#content/wording/letter.ts'
import { papersInEnglish } from '#content/wording/papers.ts'
import { reportInEnglish } from '#content/wording/report.ts'
import { troubleInEnglish } from '#content/wording/trouble.ts'
import { type CaseFile, contactNamed, personNamed } from '#core/journal/clinic.ts'
import { fill } from '#core/outcome/finding.ts'
import { procedureNamed } from '#core/procedures/procedure.ts'
import { animalOf, earOf, type Operation, operationsOf, paperOf, sayDay } from '../case/case-words.ts'
import { notYet, type PaperDefinition, type PaperInput } from '../case/paper-input.ts'
import { troubleLines } from '../case/trouble-lines.ts'
import { type Block, heading, list, paragraph, strong } from '../render/model.ts'
import { courseBlocks } from './course.ts'
import { findingBlocks } from './findings.ts'
import { hygieneCallout } from './hygiene.ts'
import { nerveBlocks } from './nerve.ts'
import { owedBlocks } from './owed.ts'
import { resultBlocks } from './results.ts'

/** The letter to the vet who sent the animal: findings, operation, results, course, and what is owed by whom. */
export const referringLetter: PaperDefinition = {
  id: 'referring-letter',
  title: 'Letter to the referring vet',
  per: 'case',
  of: (input) => {
    const { file } = input
    const animal = animalOf(file)
    if (!animal) return notYet('no-identity')
    if (animal.referringVet === null) return notYet('no-referring-vet')
    const operations = operationsOf(file).filter(({ done }) => done !== null)
    const examined = file.theCase.latest('ear-findings') ?? file.theCase.latest('baseline')
    if (!examined && operations.length === 0) return notYet('nothing-to-report')
    const { name } = animal
    const dead = file.theCase.latest('death') !== undefined
    return paperOf(input, {
      id: 'referring-letter',
      title: fill(words.title, { name }),
      blocks: [
        paragraph(addressOf(file, animal.referringVet)),
        paragraph(fill(words.dear, { name: contactNamed(file, animal.referringVet) })),
        paragraph(fill(dead ? words.openingDead : words.opening, { name })),
        ...deathBlocks(file, name),
        heading(1, fill(words.why, { name })),
        paragraph(reasonOf(file)),
        heading(1, words.findings),
        ...findingBlocks(file),
        ...choiceBlocks(file),
        heading(1, words.operations),
        ...(operations.length === 0
          ? [paragraph(words.noOperation)]
          : [list(operations.map((operation) => operationWords(file, operation)))]),
        heading(1, words.samples),
        ...resultBlocks(file),
        ...hygieneCallout(file),
        heading(1, words.course),
        ...courseBlocks(file),
        ...troubleBlocks(file, operations),
        ...nerveBlocks(file, words.nerve, 2),
        ...owedBlocks(input),
        ...(dead || operations.length === 0 ? [] : [paragraph(words.ask)]),
        ...closing(input, operations),
      ],
    })
  },
}

function addressOf(file: CaseFile, vet: string): string {
  const contact = file.contacts.get(vet)
  return [contactNamed(file, vet), contact?.practice ?? null, ...(contact?.address ?? [])]
    .filter((line) => line !== null)
    .join('\n')
}

/** The side of the first call is what was said, never a finding. */
function reasonOf(file: CaseFile): string {
  const referral = file.theCase.live('referral')[0]?.body
  if (!referral) return words.noReferral
  return fill(words.reported, { side: words.reportedSides[referral.reportedSide], complaint: referral.complaint })
}

function choiceBlocks(file: CaseFile): Block[] {
  const lines = file.theCase.live('choice').flatMap((line) =>
    line.body.options
      .filter(({ answer }) => answer === 'chosen')
      .map(({ option, answer, because }) => {
        const side = earOf(line)
        return fill(words.choiceLine, {
          side: side ? papersInEnglish.sides[side] : papersInEnglish.notRecorded,
          option: findingWords.options[option],
          answer: findingWords.answers[answer],
          because,
        })
      }),
  )
  return lines.length === 0 ? [] : [heading(1, words.choice), list(lines)]
}

function operationWords(file: CaseFile, operation: Operation): string {
  const head = fill(words.operationLine, {
    side: papersInEnglish.sides[operation.side],
    date: sayDay(operation.moment),
    operation: procedureNamed(operation.procedure, procedures).name,
    surgeon: personNamed(file, operation.surgeon),
  })
  const body = operation.summary?.body
  if (!body) return `${head}\n${words.operationUnsigned}`
  const complications =
    body.complications.map((code) => reportInEnglish.complications[code]).join(', ') || reportInEnglish.none
  return [
    head,
    fill(words.operationFindings, { findings: body.findings }),
    fill(words.operationComplications, { complications }),
  ].join('\n')
}

function deathBlocks(file: CaseFile, name: string): Block[] {
  const death = file.theCase.latest('death')
  if (!death) return []
  const { how, cause, relatedToEar } = death.body
  const said = fill(words.deathLine[how], { date: sayDay(death.header.happenedAt), cause })
  return [heading(1, fill(words.death, { name })), paragraph(`${said} ${words.deathRelated[relatedToEar]}`)]
}

/** Left out where nothing was operated: then there is nothing that trouble could follow. */
function troubleBlocks(file: CaseFile, operations: readonly Operation[]): Block[] {
  if (operations.length === 0) return []
  const lines = troubleLines(file)
  const { none, lead } = troubleInEnglish.paper
  return [heading(1, words.trouble), ...(lines.length === 0 ? [paragraph(none)] : [list(lines), paragraph(lead)])]
}

/** Signed by the surgeon who operated last; without an operation the paper is left open for a name. */
function closing({ file }: PaperInput, operations: readonly Operation[]): Block[] {
  const surgeon = operations.at(-1)?.surgeon
  return [
    paragraph(fill(words.contact, { phone: file.clinic.phone })),
    paragraph([strong(words.yours)]),
    { kind: 'signatures', lines: [surgeon ? personNamed(file, surgeon) : file.clinic.name] },
  ]
}
