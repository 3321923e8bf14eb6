import type { Mapping } from './around.ts'
import { coded, component, finding, observation } from './observations.ts'

/** Fitness for anaesthesia with its reason, and the plan for the airway in words. */
export const anaestheticAssessment: Mapping<'anaesthetic-assessment'> = (line, around) => {
  const { body } = line
  return [
    observation(line, around, {
      code: finding('anaesthetic-assessment'),
      note: [body.heartAndLungs],
      component: [
        component('asa', coded(body.asa)),
        component('emergency', { valueBoolean: body.emergency }),
        component('asa-because', { valueString: body.because }),
        component('jaw-opens', coded(body.jawOpens)),
        component('flat-face', coded(body.flatFace)),
        component('heart', coded(body.heart)),
        component('lungs', coded(body.lungs)),
        component('regurgitation', coded(body.regurgitation)),
        component('airway-a', { valueString: body.airwayA }),
        component('airway-b', { valueString: body.airwayB }),
        component('assessed-by', {
          valueString: around.file.people.get(body.assessedBy)?.name ?? body.assessedBy,
        }),
      ],
    }),
  ]
}
