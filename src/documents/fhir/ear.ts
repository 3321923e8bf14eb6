import type { BodyOf } from '#core/journal/fold.ts'
import { otis3Total } from '#core/workup/otis3.ts'
import type { Mapping } from './around.ts'
import { derivedUuid } from './naming.ts'
import { coded, component, counted, finding, measured, observation } from './observations.ts'
import { sideOf } from './side.ts'

/** One ear examined: every answer, and why there is none where nobody looked. */
export const earFindings: Mapping<'ear-findings'> = (line, around) => {
  const { body } = line
  const { otis3 } = body
  const total = otis3Total(otis3)
  const inside = [
    component('examined', coded(body.examined)),
    component('canal-feel', coded(body.canalFeel)),
    component('pain-on-pressing', coded(body.painOnPressing)),
    component('pain-on-jaw-opening', coded(body.painOnJawOpening)),
    component('swelling', coded(body.swelling)),
    component('draining-tract', coded(body.drainingTract)),
    component('discharge', coded(body.discharge)),
    component('stenosis', coded(body.stenosis)),
    component('drum', coded(body.drum)),
    component('mass', coded(body.mass)),
    component('mass-place', coded(body.massPlace)),
    component('mass-size', coded(body.massSize)),
    component('flap-carriage', coded(body.flapCarriage)),
    component('otis-erythema', counted(otis3.erythema)),
    component('otis-swelling', counted(otis3.swelling)),
    component('otis-erosion', counted(otis3.erosion)),
    component('otis-exudate', counted(otis3.exudate)),
    component('otis-total', total.kind === 'answer' ? counted(total.answer) : coded('unknown')),
  ]
  return [
    observation(line, around, {
      code: finding('ear-examined'),
      side: sideOf(line),
      note: [body.text],
      component: inside,
    }),
  ]
}

/** One ear under the microscope: each thing looked for, how much of it there was, and who looked. */
export const cytology: Mapping<'cytology'> = (line, around) => {
  const { body } = line
  return [
    observation(line, around, {
      code: finding('cytology'),
      side: sideOf(line),
      category: 'laboratory',
      note: [body.text],
      component: [
        component('cytology-site', coded(body.site)),
        component('cocci', coded(body.cocci)),
        component('rods', coded(body.rods)),
        component('yeast', coded(body.yeast)),
        component('inflammatory-cells', coded(body.inflammatoryCells)),
        component('odd-cells', coded(body.oddCells)),
        component('biofilm', coded(body.biofilm)),
        component('read-by', { valueString: around.file.people.get(body.readBy)?.name ?? body.readBy }),
      ],
    }),
  ]
}

/** Wound, face, eye and balance at one look. An answer within the time of the block says so beside it. */
export const check: Mapping<'check'> = (line, around) => {
  const { body } = line
  const inside = [
    component('seen-by', coded(body.seenBy)),
    component('wound', coded(body.wound)),
    component('wound-needed', coded(body.woundNeeded)),
    component('sutures', coded(body.sutures)),
    component('blink', coded(body.blink)),
    component('lip-or-ear-droop', coded(body.lipOrEarDroop)),
    component('nostril', coded(body.nostril)),
    component('possible-block-effect', { valueBoolean: body.possibleBlockEffect }),
    component('horner', coded(body.horner)),
    component('head-tilt', coded(body.headTilt)),
    component('nystagmus', coded(body.nystagmus)),
    component('unsteady', coded(body.unsteady)),
    component('gag', coded(body.gag)),
    component('hears', coded(body.hears)),
    component('tear-test', measured(body.tearTest)),
    component('fluorescein', coded(body.fluorescein)),
    component('painful', coded(body.painful)),
  ]
  return [
    observation(line, around, {
      code: finding('operated-ear'),
      side: sideOf(line),
      note: [body.text],
      component: inside,
    }),
  ]
}

/** Face and eye of both sides, and what belongs to no side. */
export const baseline: Mapping<'baseline'> = (line, around) => {
  const { body } = line
  const whole = observation(line, around, {
    code: finding('nerves-and-balance'),
    component: [
      component('before-sedation', { valueBoolean: body.beforeSedation }),
      ...body.drugsOnBoard.map((drug) => component('drugs-on-board', { valueString: drug })),
      component('head-tilt', coded(body.headTilt)),
      component('nystagmus', coded(body.nystagmus)),
      component('unsteady', coded(body.unsteady)),
      component('gag', coded(body.gag)),
      component('hears', coded(body.hears)),
    ],
  })
  const sides = (['LEFT', 'RIGHT'] as const).map((side) =>
    observation(line, around, {
      code: finding('face-and-eye'),
      id: derivedUuid(line.header.id, 'face', side),
      side,
      component: faceComponents(body[side]),
    }),
  )
  return [whole, ...sides]
}

function faceComponents(face: BodyOf<'baseline'>['LEFT']) {
  return [
    component('blink', coded(face.blink)),
    component('lip-or-ear-droop', coded(face.lipOrEarDroop)),
    component('nostril', coded(face.nostril)),
    component('pupil', coded(face.pupil)),
    component('third-eyelid-up', coded(face.thirdEyelidUp)),
    component('tear-test', measured(face.tearTest)),
    component('fluorescein', coded(face.fluorescein)),
  ]
}

export const twelveMonths: Mapping<'twelve-months'> = (line, around) => {
  const { body } = line
  return [
    observation(line, around, {
      code: finding('twelve-months'),
      side: sideOf(line),
      note: [body.text],
      component: [
        component('status', coded(body.status)),
        component('source', coded(body.source)),
        component('tries', counted(body.tries)),
        component('face', coded(body.face)),
        component('would-choose-again', coded(body.wouldChooseAgain)),
      ],
    }),
  ]
}
