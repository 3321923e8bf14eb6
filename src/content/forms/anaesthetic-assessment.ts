import type { FormArrangement } from '#core/forms/arrangement.ts'

/** Before the anaesthetic: how fit, and how the airway is reached. */
export const anaestheticAssessment = {
  kind: 'anaesthetic-assessment',
  place: 'case',
  chapters: ['Work-up', 'Theatre'],
  writtenBy: ['anaesthetist', 'surgeon', 'nurse'],
  amendable: true,
  sections: [
    { id: 'airway', fields: ['jawOpens', 'flatFace', 'regurgitation', 'airwayA', 'airwayB'] },
    { id: 'chest', fields: ['heart', 'lungs', 'heartAndLungs'] },
    { id: 'status', fields: ['asa', 'emergency', 'because', 'assessedBy'] },
  ],
  fields: { assessedBy: { register: 'person' }, emergency: { control: 'tick' } },
} as const satisfies FormArrangement
