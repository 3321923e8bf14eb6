import { type Side, sides } from '#core/animal/species.ts'
import type { CaseFile } from '#core/journal/clinic.ts'
import type { BodyOf, Line } from '#core/journal/fold.ts'
import { redFlags } from '#core/journal/kinds/referral.ts'
import { isOfEar } from '#core/owed/operations.ts'
import { affectedEars, animalOf } from './ears.ts'
import { type Missing, missingIn } from './missing.ts'
import { missingBloods } from './missing-for-theatre.ts'

/** What the first call left open: who, whose, how urgent, which side. */
export function missingAtReferral({ theCase }: CaseFile): Missing[] {
  const animal = animalOf(theCase)
  const missing = missingIn('Referral', animal)
  const referral = theCase.latest('referral')
  const identity = theCase.latest('identity')
  return [
    ...(referral
      ? leftOpen(referral, theCase.latest('ear-findings') !== undefined, missing)
      : [missing('referral-missing', 'referral')]),
    ...(identity ? unknownOfAnimal(identity, missing) : [missing('identity-missing', 'identity')]),
    ...household(theCase, identity, missing),
  ]
}

type Make = ReturnType<typeof missingIn>

/** Red flags decide how soon the animal is seen; once it was examined they only help to know. */
function leftOpen({ header, body }: Line<BodyOf<'referral'>>, examined: boolean, missing: Make): Missing[] {
  const amends = header.id
  const answered = new Set(body.signs.filter(({ answer }) => answer !== 'not-asked').map(({ sign }) => sign))
  const notAsked = redFlags.filter((sign) => !answered.has(sign))
  return [
    ...(notAsked.length > 0
      ? [
          missing('red-flags-not-asked', 'referral', {
            amends,
            weight: examined ? 'useful' : 'needed',
            about: { signs: notAsked.join(', ') },
          }),
        ]
      : []),
    ...(body.drugAllergy.answer === 'not-asked' ? [missing('allergy-not-asked', 'referral', { amends })] : []),
    ...(body.mayFetchRecords === 'not-asked'
      ? [missing('records-not-asked', 'referral', { amends, weight: 'useful' })]
      : []),
    ...(body.reportedSide === 'unknown' ? [missing('side-unknown', 'referral', { amends, weight: 'useful' })] : []),
  ]
}

function unknownOfAnimal({ header, body }: Line<BodyOf<'identity'>>, missing: Make): Missing[] {
  const useful = { amends: header.id, weight: 'useful' } as const
  return [
    ...(body.chip === null ? [missing('chip-unknown', 'identity', useful)] : []),
    ...(body.born === null ? [missing('birth-unknown', 'identity', useful)] : []),
  ]
}

function household(
  theCase: CaseFile['theCase'],
  identity: Line<BodyOf<'identity'>> | undefined,
  missing: Make,
): Missing[] {
  const id = identity?.body.household
  const subject = id === undefined ? null : ({ kind: 'household', household: id } as const)
  const line = theCase
    .live('household')
    .findLast(({ header }) => header.subject.kind === 'household' && header.subject.household === id)
  if (!line) return [missing('household-missing', 'household', {}, subject)]
  if (line.body.contacts.some(({ mayConsent }) => mayConsent)) return []
  return [missing('nobody-may-consent', 'household', { amends: line.header.id }, subject)]
}

/** What the work-up has not looked at: both ears, even with one complaint; "not assessed" is not "normal". */
export function missingInWorkUp(file: CaseFile): Missing[] {
  const { theCase } = file
  const missing = missingIn('Work-up', animalOf(theCase))
  const medicines = theCase.live('medicine-before')
  return [
    ...(theCase.latest('history-item') ? [] : [missing('history-missing', 'history-item')]),
    ...(medicines.length > 0 ? [] : [missing('medicines-missing', 'medicine-before')]),
    ...medicines
      .filter(({ body }) => body.substance === null)
      .map(({ header, body }) =>
        missing('medicine-active-unknown', 'medicine-before', {
          amends: header.id,
          weight: 'useful',
          about: { written: body.written },
        }),
      ),
    ...sides.flatMap((side) => earLooks(theCase, side, missing)),
    ...affectedEars(theCase)
      .filter((side) => !theCase.live('cytology').some((line) => isOfEar(line, side)))
      .map((side) => missing('cytology-missing', 'cytology', { side, weight: 'useful' })),
    ...baselineGaps(theCase, missing),
    ...(theCase.latest('weight') ? [] : [missing('weight-missing', 'weight')]),
    ...imagingGaps(theCase, missing),
    ...missingBloods(file),
  ]
}

function earLooks(theCase: CaseFile['theCase'], side: Side, missing: Make): Missing[] {
  const looks = theCase.live('ear-findings').filter((line) => isOfEar(line, side))
  const last = looks.at(-1)
  if (!last) return [missing('ear-not-examined', 'ear-findings', { side })]
  // Of each finding the latest answer that was one stands.
  const open = ['canalFeel', 'painOnPressing', 'painOnJawOpening', 'swelling', 'discharge', 'stenosis', 'drum', 'mass']
    .filter((field) => looks.every(({ body }) => (body as Record<string, unknown>)[field] === 'not-assessed'))
    .join(', ')
  if (open === '') return []
  return [
    missing('findings-not-assessed', 'ear-findings', {
      side,
      amends: last.header.id,
      weight: 'useful',
      about: { fields: open },
    }),
  ]
}

function baselineGaps(theCase: CaseFile['theCase'], missing: Make): Missing[] {
  const baseline = theCase.latest('baseline')
  if (!baseline) return [missing('baseline-missing', 'baseline')]
  return sides.flatMap((side) => {
    const face = baseline.body[side] as Record<string, unknown>
    const fields = Object.keys(face).filter((field) => face[field] === 'not-assessed' || face[field] === null)
    if (fields.length === 0) return []
    const weight = fields.includes('blink') ? 'needed' : 'useful'
    const about = { fields: fields.join(', ') }
    return [
      missing(
        'baseline-not-assessed',
        'baseline',
        { side, amends: baseline.header.id, weight, about },
        baseline.header.subject,
      ),
    ]
  })
}

function imagingGaps(theCase: CaseFile['theCase'], missing: Make): Missing[] {
  const scans = theCase.live('imaging')
  if (scans.length === 0) return [missing('imaging-missing', 'imaging')]
  return affectedEars(theCase)
    .filter((side) => scans.every(({ body }) => body[side] === null))
    .map((side) => {
      const last = scans.at(-1)
      return missing(
        'imaging-side-not-reported',
        'imaging',
        { side, weight: 'useful', amends: last?.header.id ?? null },
        last?.header.subject,
      )
    })
}
